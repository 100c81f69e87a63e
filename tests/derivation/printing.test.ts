import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  cell,
  decimalsOf,
  dimensionText,
  lengthText,
  tidy,
  valueText,
  type Printing,
} from '../../src/derivation/printing.ts';
import { toLinear } from '../../src/equation/index.ts';

const us: Printing = { system: 'us', figures: 4 };
const si: Printing = { system: 'si', figures: 4 };
const feet: Printing = { ...us, lengths: 'feet-inches' };
const plain = (text: string): string => text.replaceAll('\u00a0', ' ');
const foot = 0.3048;
const kip = 4448.2216152605;

describe('value', () => {
  test('prints a result to the figures of the project, and an exact zero as 0', () => {
    expect(plain(valueText(us, 'force', 2.4 * kip))).toBe('2.400 kip');
    expect(plain(valueText(si, 'moment', 12345))).toBe('12.35 kN·m');
    expect(plain(valueText(us, 'force', 0))).toBe('0 kip');
  });
});

describe('tidy', () => {
  test('prints a length with its own few digits where they say it exactly, else rounded', () => {
    expect(plain(lengthText(us, 12.5 * foot))).toBe('12.5 ft');
    expect(plain(lengthText(us, (32 + 8 / 12) * foot))).toBe('32.67 ft');
    expect(plain(lengthText(si, 2.4))).toBe('2.4 m');
  });

  test('keeps the value whatever it prints', () => {
    fc.assert(
      fc.property(fc.double({ min: 0.01, max: 100, noNaN: true }), (metres) => {
        expect(tidy(us, 'length', metres).quantity.si).toBeCloseTo(metres, 9);
      }),
    );
  });
});

describe('dimension', () => {
  test('reads in feet and inches where the project asks for them and a sixteenth tells it', () => {
    expect(plain(dimensionText(feet, (7 + 8 / 12) * foot))).toBe('7 ft 8 in');
    expect(plain(dimensionText(feet, (12 + 6.5 / 12) * foot))).toBe('12 ft 6 1/2 in');
  });

  test('stays decimal for whole feet, for other projects, and between two sixteenths', () => {
    expect(plain(dimensionText(feet, 20 * foot))).toBe('20 ft');
    expect(plain(dimensionText(us, 7.5 * foot))).toBe('7.5 ft');
    expect(plain(dimensionText(feet, 10.3333 * foot + 0.0004))).toBe('10.33 ft');
    expect(plain(dimensionText({ ...si, lengths: 'feet-inches' }, 2.5))).toBe('2.5 m');
  });
});

describe('cell', () => {
  test('gives a column one number of decimals, from its greatest value', () => {
    const column = [2.453 * kip, 27.42 * kip, 0];
    const decimals = decimalsOf(us, 'force', column);
    expect(column.map((of) => toLinear(cell(us, 'force', of, decimals)))).toEqual([
      '2.45',
      '27.42',
      '0',
    ]);
  });
});
