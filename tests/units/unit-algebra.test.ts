import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  divideUnits,
  expandUnit,
  multiplyUnits,
  parseUnit,
  powerOfUnit,
  pureUnit,
  sameDimension,
  sameUnit,
  unitOf,
  unitTable,
  unitText,
  type Unit,
} from '../../src/units/index.ts';

const unit = (text: string): Unit => {
  const parsed = parseUnit(text);
  if (parsed.unit === undefined) throw new Error(text);
  return parsed.unit;
};

const anyUnit = fc
  .array(
    fc.record({
      symbol: fc.constantFrom(...unitTable.map((entry) => entry.symbol)),
      power: fc.integer({ min: -3, max: 3 }),
    }),
    { maxLength: 4 },
  )
  .map((factors) => unitOf(factors));

describe('unit algebra', () => {
  test('factors of one symbol are merged and powers of 0 drop out', () => {
    const factors = [
      { symbol: 'ft', power: 2 },
      { symbol: 'kip', power: 1 },
      { symbol: 'ft', power: -2 },
    ];
    expect(unitOf(factors).factors).toEqual([{ symbol: 'kip', power: 1 }]);
  });

  test('a product names the force first, whatever came first', () => {
    expect(unitText(multiplyUnits(unit('ft'), unit('kip')))).toBe('kip·ft');
    expect(unitText(multiplyUnits(unit('m'), unit('kN')))).toBe('kN·m');
    expect(unitText(divideUnits(unit('kip ft'), unit('ft')))).toBe('kip');
  });

  test('short names written out are worth the same and measure the same', () => {
    for (const { symbol, shortFor } of unitTable) {
      if (shortFor === undefined) continue;
      const short = unitOf([{ symbol, power: 1 }]);
      const long = expandUnit(short);
      expect(sameDimension(long.dimension, short.dimension), symbol).toBe(true);
      expect(Math.abs(long.inSi / short.inSi - 1), symbol).toBeLessThan(1e-15);
    }
    expect(unitText(expandUnit(unit('psf')))).toBe('lb/ft²');
    expect(unitText(expandUnit(unit('klf ft')))).toBe('kip');
  });

  test('dividing undoes multiplying', () => {
    fc.assert(
      fc.property(anyUnit, anyUnit, (a, b) => {
        const back = divideUnits(multiplyUnits(a, b), b);
        expect(sameUnit(back, a)).toBe(true);
        expect(Math.abs(back.inSi / a.inSi - 1)).toBeLessThan(1e-12);
      }),
    );
  });

  test('a power is a repeated product, and the zeroth power is a pure number', () => {
    fc.assert(
      fc.property(anyUnit, (a) => {
        expect(sameUnit(powerOfUnit(a, 2), multiplyUnits(a, a))).toBe(true);
        expect(powerOfUnit(a, 0)).toEqual(pureUnit);
      }),
    );
  });
});
