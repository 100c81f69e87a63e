import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  dimensions,
  parseQuantity,
  parseUnit,
  unitText,
  type DimensionName,
} from '../../src/units/index.ts';

const read = (text: string, expected?: DimensionName) =>
  parseQuantity(text, expected === undefined ? undefined : dimensions[expected]);

describe('quantities as people write them', () => {
  test.each<[string, DimensionName, number, string]>([
    ['8.4 kip', 'force', 8.4 * 4448.2216152605, '8.4'],
    ['8.4kip', 'force', 8.4 * 4448.2216152605, '8.4'],
    ['1,250 lb', 'force', 1250 * 4.4482216152605, '1,250'],
    ['-1,250 lb', 'force', -1250 * 4.4482216152605, '−1,250'],
    ['\u22128.4 kN', 'force', -8400, '−8.4'],
    ['12 ft 6 in', 'length', 3.81, '12 ft 6 in'],
    ['12 ft 6 1/2 in', 'length', 3.8227, '12 ft 6 1/2 in'],
    ['12\'-6 1/2"', 'length', 3.8227, '12 ft 6 1/2 in'],
    ["12'", 'length', 3.6576, '12'],
    ['6"', 'length', 0.1524, '6'],
    ['6 1/2 in', 'length', 0.1651, '6 1/2'],
    ['-2 ft 6 in', 'length', -0.762, '−2 ft 6 in'],
    ['36.9e6 mm^4', 'inertia', 36.9e-6, '36.9e6'],
    ['12e-6 1/K', 'expansion', 12e-6, '12e-6'],
    ['20 K', 'temperature', 20, '20'],
    ['36 F', 'temperature', 20, '36'],
    ['300 deg', 'angle', (300 * Math.PI) / 180, '300'],
    ['40 kip/in', 'force-per-length', (40 * 4448.2216152605) / 0.0254, '40'],
    ['900 kip ft/rad', 'rotational-stiffness', 900 * 4448.2216152605 * 0.3048, '900'],
    ['490 pcf', 'unit-weight', (490 * 4.4482216152605) / 0.3048 ** 3, '490'],
    ['1/360', 'pure', 1 / 360, '1/360'],
    ['1.33', 'pure', 1.33, '1.33'],
  ])('%s is %s', (text, expected, si, tidy) => {
    const { quantity, plus } = read(text, expected) as Exclude<
      ReturnType<typeof read>,
      { problem: object }
    >;
    expect(quantity.si / si).toBeCloseTo(1, 14);
    expect(quantity.text).toBe(tidy);
    expect(plus).toBe(false);
  });

  test('a plus is reported and not kept', () => {
    expect(read('+4 ft', 'length')).toMatchObject({
      plus: true,
      quantity: { text: '4', si: 1.2192 },
    });
  });

  test('a bare nought fits anywhere and takes the unit that is asked for', () => {
    const kip = parseUnit('kip').unit!;
    const { quantity } = parseQuantity('0', dimensions.force, kip);
    expect(quantity).toMatchObject({ si: 0, text: '0', unit: kip });
    for (const name of Object.keys(dimensions) as DimensionName[]) {
      const zero = read('-0.0', name).quantity;
      expect(Object.is(zero?.si, 0), name).toBe(true);
      expect(zero?.dimension, name).toEqual(dimensions[name]);
    }
    expect(parseQuantity('0 ft', dimensions.force).problem?.kind).toBe(
      'wrong-dimension',
    );
  });

  test('a unit is kept as it was given', () => {
    expect(unitText(read('26 plf').quantity!.unit)).toBe('plf');
    expect(unitText(read('9 k-ft').quantity!.unit)).toBe('kip·ft');
  });
});

describe('quantities that are refused', () => {
  test.each<[string, DimensionName | undefined, string, string]>([
    ['5', 'length', 'bare-number', '5'],
    ['8.4 kps', 'force', 'unknown-unit', 'kps'],
    ['9 kip', 'length', 'wrong-dimension', '9 kip'],
    ['9 kip ft', 'pure', 'wrong-dimension', '9 kip ft'],
    ['1,25 kN', 'force', 'ambiguous-comma', '1,25 kN'],
    ['0,500 kN', 'force', 'ambiguous-comma', '0,500 kN'],
    ['12,50,000 lb', 'force', 'ambiguous-comma', '12,50,000 lb'],
    ['1, 250 lb', 'force', 'ambiguous-comma', '1, 250 lb'],
    ['NaN kip', 'force', 'not-finite', 'NaN kip'],
    ['.nan', 'force', 'not-finite', '.nan'],
    ['-.inf', 'force', 'not-finite', '.inf'],
    ['Infinity', 'force', 'not-finite', 'Infinity'],
    ['1e999 kN', 'force', 'not-finite', '1e999 kN'],
    ['1e-400 kN', 'force', 'not-finite', '1e-400 kN'],
    ['1e200 kN', 'force', 'not-finite', '1e200 kN'],
    ['0x1F kN', 'force', 'malformed', '0x1F kN'],
    ['1_250 kN', 'force', 'malformed', '1_250 kN'],
    ['1.2.3 kN', 'force', 'malformed', '1.2.3 kN'],
    ['12 500 N', 'force', 'malformed', '12 500 N'],
    ['12.5 ft 6 in', 'length', 'malformed', '12.5 ft 6 in'],
    ['12 ft 14 in', 'length', 'malformed', '12 ft 14 in'],
    ['6½ in', 'length', 'malformed', '6½ in'],
    ['1e+ kN', 'force', 'malformed', '1e+ kN'],
    ['--5 kip', 'force', 'malformed', '-5 kip'],
    ['kip', 'force', 'malformed', 'kip'],
    ['', 'force', 'malformed', ''],
    ['50 %', 'pure', 'malformed', '%'],
    ['4 kN/m rad', undefined, 'malformed', 'rad'],
    ['  8.4   zzz ', 'force', 'unknown-unit', 'zzz'],
    [`${'9'.repeat(300)} kip`, 'force', 'malformed', `${'9'.repeat(300)} kip`],
    [`${'9'.repeat(100)} kip`, 'force', 'not-finite', `${'9'.repeat(100)} kip`],
  ])('%s, where a %s is wanted, is %s', (text, expected, kind, place) => {
    const { problem } = read(text, expected);
    expect(problem?.kind).toBe(kind);
    expect(text.slice(problem!.start, problem!.end)).toBe(place);
    expect(problem!.message.endsWith('.')).toBe(false);
  });

  test('a bare number is told which units would fit', () => {
    expect(read('5', 'length').problem).toMatchObject({
      message: '5 has no unit, and a length is wanted',
      hints: ['write 5 ft, 5 in, 5 m or 5 mm'],
    });
  });

  test('a mistyped unit is told the nearest one and those that fit', () => {
    expect(read('8.4 KN', 'force').problem?.hints).toEqual([
      'write kN',
      'units that fit here: kip, lb, kN, N',
    ]);
  });

  test('a comma is told both readings', () => {
    expect(read('1,25 kN', 'force').problem?.hints).toEqual([
      'write 1.25 kN, with a decimal point',
    ]);
    expect(read('1, 250 lb', 'force').problem?.hints).toEqual([
      'write 1250 lb, or "1,250 lb"',
    ]);
  });

  test('a mass is told that it is none of the forces', () => {
    expect(read('80 kg', 'force').problem?.hints[0]).toBe(
      'kg is a mass: write its weight, in kN or lb',
    );
  });
});

describe('any text', () => {
  const scraps = fc.constantFrom(
    '1', '2', '.', ',', 'e', '-', '+', '−', '/', ' ', 'ft', 'in', 'kip', "'", '"', '^', '(',
    ')', '½', '×10', '⁶', '°', 'F', 'K', '0x', '_', 'NaN', '#', '\u202f', '__proto__',
  ); // prettier-ignore

  test('gives a finite quantity or a problem with a place inside it, and never throws', () => {
    const text = fc.oneof(
      fc.string({ unit: 'binary', maxLength: 60 }),
      fc.array(scraps, { maxLength: 14 }).map((parts) => parts.join('')),
    );
    fc.assert(
      fc.property(
        text,
        fc.constantFrom(...Object.values(dimensions)),
        (written, of) => {
          const { quantity, problem } = parseQuantity(written, of);
          if (problem === undefined) {
            expect(Number.isFinite(quantity.si)).toBe(true);
            return;
          }
          expect(problem.start).toBeGreaterThanOrEqual(0);
          expect(problem.end).toBeGreaterThanOrEqual(problem.start);
          expect(problem.end).toBeLessThanOrEqual(written.length);
        },
      ),
      { numRuns: 1000 },
    );
  });

  test('is answered at once, however long', () => {
    const before = performance.now();
    for (const part of ['9', '9,', '1 ', 'ft ', "'", '1/', '9'.repeat(50) + ' ']) {
      parseQuantity(part.repeat(200_000 / part.length));
    }
    expect(performance.now() - before).toBeLessThan(1000);
  });
});
