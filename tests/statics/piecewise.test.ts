import { describe, expect, test } from 'vitest';
import {
  breakpointsOf,
  jumpsOf,
  sizeOf,
  valueAt,
  type Piecewise,
} from '../../src/statics/index.ts';

// Up to 6 a slope from 4 to −2, there a leap to 3, which falls to 0 at 9.
const f: Piecewise = {
  pieces: [
    { start: 0, end: 6, coefficients: [4, -1] },
    { start: 6, end: 9, coefficients: [3, -1] },
  ],
};

describe('valueAt', () => {
  test('tells the two sides of a jump apart', () => {
    expect(valueAt(f, 6, 'left')).toBe(-2);
    expect(valueAt(f, 6, 'right')).toBe(3);
  });

  test('gives the value just inside at the ends, from either side', () => {
    expect(valueAt(f, 0, 'left')).toBe(4);
    expect(valueAt(f, 9, 'right')).toBe(0);
  });

  test('takes a station a rounding beside a breakpoint for the breakpoint', () => {
    expect(valueAt(f, 6 + 1e-12, 'left')).toBe(-2);
    expect(valueAt(f, 6 - 1e-12, 'right')).toBe(3);
    expect(valueAt(f, 9 + 1e-12, 'left')).toBe(0);
  });

  test('refuses a station off the beam', () => {
    expect(() => valueAt(f, 9.1, 'left')).toThrow(RangeError);
    expect(() => valueAt(f, -0.1, 'right')).toThrow(RangeError);
    expect(() => valueAt({ pieces: [] }, 0, 'left')).toThrow(RangeError);
  });
});

describe('breakpointsOf, jumpsOf and sizeOf', () => {
  test('list the stations, the leaps with both sides, and a bound of the values', () => {
    expect(breakpointsOf(f)).toEqual([0, 6, 9]);
    expect(jumpsOf(f)).toEqual([{ x: 6, left: -2, right: 3 }]);
    expect(sizeOf(f)).toBeGreaterThanOrEqual(4);
  });

  test('see no leap where pieces meet, or all but meet', () => {
    const met: Piecewise = {
      pieces: [
        { start: 0, end: 1, coefficients: [0, 0.3] },
        { start: 1, end: 2, coefficients: [0.1 * 3] },
      ],
    };
    expect(jumpsOf(met)).toEqual([]);
  });

  test('are empty of nothing', () => {
    expect(breakpointsOf({ pieces: [] })).toEqual([]);
    expect(sizeOf({ pieces: [] })).toBe(0);
  });
});
