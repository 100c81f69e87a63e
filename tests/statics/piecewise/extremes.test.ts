import fc from 'fast-check';
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

describe('extremesOf a function of many pieces', () => {
  test('misses no turning point by looking only at pieces that may hold one', () => {
    const coefficient = fc.integer({ min: -9, max: 9 });
    const piece = fc.tuple(
      fc.integer({ min: 1, max: 4 }),
      fc.array(coefficient, { minLength: 1, maxLength: 6 }),
    );
    fc.assert(
      fc.property(fc.array(piece, { minLength: 1, maxLength: 6 }), (seeds) => {
        let start = 0;
        const pieces = seeds.map(([length, coefficients]) => {
          const end = start + length;
          const made = { start, end, coefficients };
          start = end;
          return made;
        });
        const { max, min } = extremesOf({ pieces });
        const each = pieces.map((one) => extremesOf({ pieces: [one] }));
        const size = Math.max(Math.abs(max.value), Math.abs(min.value), 1);
        const highest = Math.max(...each.map((one) => one.max.value));
        const lowest = Math.min(...each.map((one) => one.min.value));
        expect(Math.abs(max.value - highest)).toBeLessThanOrEqual(1e-9 * size);
        expect(Math.abs(min.value - lowest)).toBeLessThanOrEqual(1e-9 * size);
        for (const { start: from, end, coefficients } of pieces)
          for (let step = 0; step <= 50; step += 1) {
            const s = ((end - from) * step) / 50;
            const value = coefficients.reduceRight((sum, c) => sum * s + c, 0);
            expect(
              value <= max.value + 1e-9 * size && value >= min.value - 1e-9 * size,
            ).toBe(true);
          }
      }),
    );
  });
});
