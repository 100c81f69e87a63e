import { describe, expect, test } from 'vitest';
import { readGiven } from '../../src/units/read-given.ts';

describe('given texts', () => {
  test('a power of ten is taken apart', () => {
    expect(readGiven('-36.9e6', false)).toEqual({
      text: '−36.9×10⁶',
      negative: true,
      mantissa: '36.9',
      exponent: 6,
      compound: false,
      value: -36.9e6,
      lastPlace: 1e5,
    });
  });

  test('feet and inches count in feet', () => {
    const printed = readGiven('−2 ft 6 in', true);
    expect(printed).toMatchObject({ text: '−2 ft 6 in', value: -2.5, compound: true });
    expect(printed.lastPlace).toBeCloseTo(1 / 12, 15);
  });

  test('a nought has neither sign nor last place', () => {
    expect(readGiven('-0', false)).toMatchObject({ text: '0', value: 0, lastPlace: 0 });
    expect(Object.is(readGiven('-0', false).value, 0)).toBe(true);
  });

  test.each(['', 'kip', '8.4 kip', '1e999'])(
    '"%s" is a programmer’s mistake',
    (text) => {
      expect(() => readGiven(text, false)).toThrow(RangeError);
    },
  );
});
