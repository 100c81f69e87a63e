import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  formatFeetInches,
  parseQuantity,
  parseUnit,
  quantity,
} from '../../src/units/index.ts';

const inch = parseUnit('in').unit!;
const foot = parseUnit('ft').unit!;
const inches = (count: number) => formatFeetInches(quantity(count, inch)).text;

describe('feet and inches', () => {
  test.each([
    [150.5, '12 ft 6 1/2 in'],
    [150, '12 ft 6 in'],
    [-30, '−2 ft 6 in'],
    [11.97, '1 ft 0 in'],
    [0.03125, '0 ft 0 1/16 in'],
    [-0.03125, '−0 ft 0 1/16 in'],
    [0.031, '0 ft 0 in'],
    [-0.031, '0 ft 0 in'],
    [0, '0 ft 0 in'],
    [3.1875, '0 ft 3 3/16 in'],
  ])('%d in prints as %s', (count, text) => {
    expect(inches(count)).toBe(text);
  });

  test('any length is printed to the nearest sixteenth and read back', () => {
    fc.assert(
      fc.property(fc.double({ noNaN: true, min: -1e4, max: 1e4 }), (count) => {
        const printed = formatFeetInches(quantity(count, inch));
        expect(Math.abs(printed.value * 12 - count)).toBeLessThanOrEqual(1 / 32 + 1e-9);
        const back = parseQuantity(printed.text).quantity!;
        expect(back.si).toBeCloseTo(quantity(printed.value, foot).si, 10);
      }),
    );
  });
});
