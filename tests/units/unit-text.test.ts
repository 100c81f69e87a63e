import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  parseUnit,
  sameUnit,
  unitOf,
  unitTable,
  unitText,
} from '../../src/units/index.ts';

const cases: readonly (readonly [written: string, print: string, data: string])[] = [
  ['kip ft', 'kip·ft', 'kip ft'],
  ['kN m', 'kN·m', 'kN m'],
  ['kip/ft', 'kip/ft', 'kip/ft'],
  ['in^4', 'in⁴', 'in^4'],
  ['kN/m^2', 'kN/m²', 'kN/m^2'],
  ['kip ft/rad', 'kip·ft/rad', 'kip ft/rad'],
  ['1/K', '1/K', '1/K'],
  ['kN/(m rad)', 'kN/(m·rad)', 'kN/(m rad)'],
  ['deg', '°', 'deg'],
  ['', '', '1'],
];

describe('units as text', () => {
  test.each(cases)(
    '%s prints as %s and goes into data as %s',
    (written, print, data) => {
      const unit = parseUnit(written).unit!;
      expect(unitText(unit)).toBe(print);
      expect(unitText(unit, 'data')).toBe(data);
    },
  );

  test('whatever is printed is read back', () => {
    const factor = fc.record({
      symbol: fc.constantFrom(...unitTable.map((entry) => entry.symbol)),
      power: fc.constantFrom(-4, -3, -2, -1, 1, 2, 3, 4),
    });
    fc.assert(
      fc.property(fc.array(factor, { minLength: 1, maxLength: 4 }), (factors) => {
        const unit = unitOf(factors);
        if (unit.factors.length === 0) return;
        for (const style of ['print', 'data'] as const) {
          const text = unitText(unit, style);
          const { unit: back } = parseUnit(text);
          expect(back, text).toBeDefined();
          expect(sameUnit(back!, unit), text).toBe(true);
        }
      }),
    );
  });
});
