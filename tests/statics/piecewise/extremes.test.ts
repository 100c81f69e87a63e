import { describe, expect, test } from 'vitest';
import { extremesOf } from '../../../src/statics/index.ts';

describe('extremesOf', () => {
  test('finds the top of a parabola inside a piece', () => {
    // M of a simple beam of 8 under 3 per length: 12 s − 1.5 s², greatest wL²/8 = 24 in the middle.
    const found = extremesOf({
      pieces: [{ start: 1, end: 9, coefficients: [0, 12, -1.5] }],
    });
    expect(found.max).toEqual({ value: 24, x: 5 });
    expect(found.min).toEqual({ value: 0, x: 1 });
  });

  test('counts both sides of a jump', () => {
    const f = {
      pieces: [
        { start: 0, end: 4, coefficients: [1, 1] },
        { start: 4, end: 6, coefficients: [-9, 1] },
      ],
    };
    expect(extremesOf(f)).toEqual({
      max: { value: 5, x: 4 },
      min: { value: -9, x: 4 },
    });
  });

  test('names the leftmost of places that agree to rounding', () => {
    const f = {
      pieces: [
        { start: 0, end: 2, coefficients: [0, 0.3] },
        { start: 2, end: 4, coefficients: [0.6 - 1e-15, -0.2] },
        { start: 4, end: 6, coefficients: [0.6 + 1e-12] },
      ],
    };
    const { max } = extremesOf(f);
    expect(max.x).toBe(2);
    expect(max.value).toBeCloseTo(0.6, 11);
  });

  test('of nothing but zero stand at the left end', () => {
    const zero = { pieces: [{ start: 3, end: 5, coefficients: [0] }] };
    expect(extremesOf(zero)).toEqual({
      max: { value: 0, x: 3 },
      min: { value: 0, x: 3 },
    });
  });

  test('give exactly 0 where the function ends in rounding', () => {
    const { min } = extremesOf({
      pieces: [{ start: 0, end: 3, coefficients: [0.3, -0.1] }],
    });
    expect(min).toEqual({ value: 0, x: 3 });
  });

  test('of a function without pieces do not exist', () => {
    expect(() => extremesOf({ pieces: [] })).toThrow(RangeError);
  });
});
