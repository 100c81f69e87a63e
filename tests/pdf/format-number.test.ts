import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { formatNumber, formatNumbers } from '../../src/pdf/format-number.ts';

describe('a number in a content stream', () => {
  test.each([
    [0, '0'],
    [-0, '0'],
    [-0.0004, '0'],
    [1 / 3, '0.333'],
    [72, '72'],
    [-12.3456, '-12.346'],
    [1e-9, '0'],
    [123456.7891, '123456.789'],
  ])('%d is written %s', (value, text) => {
    expect(formatNumber(value)).toBe(text);
  });

  test('is plain digits within half a thousandth of the value', () => {
    fc.assert(
      fc.property(fc.double({ min: -1e6, max: 1e6, noNaN: true }), (value) => {
        const text = formatNumber(value);
        expect(text).toMatch(/^-?\d+(?:\.\d{1,3})?$/u);
        expect(Math.abs(Number(text) - value)).toBeLessThanOrEqual(0.000501);
      }),
    );
  });

  test('is refused where it is no place on a page', () => {
    for (const value of [NaN, Infinity, -Infinity, 1e12])
      expect(() => formatNumber(value)).toThrow(RangeError);
  });

  test('stands apart from the next by a space', () => {
    expect(formatNumbers(1, 2.5, -3)).toBe('1 2.5 -3');
  });
});
