import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  decimalsFor,
  plainDigits,
  roundDecimal,
  toDecimal,
} from '../../src/units/round-decimal.ts';

describe('rounding of decimals', () => {
  test('a double reads as the decimal that was meant', () => {
    expect(toDecimal(1.005 * 1000).digits).toMatch(/^10050*$/);
    expect(toDecimal(0.1 + 0.2).digits).toMatch(/^30*$/);
    expect(toDecimal(-0)).toEqual({ negative: false, digits: '', point: 0 });
  });

  test('NaN and infinities cannot be printed', () => {
    for (const value of [NaN, Infinity, -Infinity]) {
      expect(() => toDecimal(value)).toThrow(RangeError);
    }
  });

  test('what rounds to nothing has neither digits nor sign', () => {
    expect(roundDecimal(toDecimal(-0.004), 2)).toEqual({
      negative: false,
      digits: '',
      point: 0,
    });
  });

  test('a carry is counted when significant figures are asked for', () => {
    const decimal = toDecimal(9.996);
    expect(decimalsFor(decimal, 3)).toBe(1);
    expect(plainDigits(roundDecimal(decimal, 1), 1)).toBe('10.0');
  });

  test('rounding a whole number of thousandths agrees with whole-number arithmetic', () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 9_999_999 }), (thousandths) => {
        const printed = plainDigits(roundDecimal(toDecimal(thousandths / 1000), 2), 2);
        const hundredths = Math.floor((thousandths + 5) / 10);
        const whole = Math.floor(hundredths / 100);
        expect(printed).toBe(`${whole}.${String(hundredths % 100).padStart(2, '0')}`);
      }),
    );
  });
});
