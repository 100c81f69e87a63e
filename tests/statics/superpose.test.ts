import { describe, expect, test } from 'vitest';
import {
  breakpointsOf,
  isClosed,
  solveBeam,
  superpose,
  valueAt,
} from '../../src/statics/index.ts';
import { beam, down, pin, roller, spread } from '../support/beam.ts';

const outcome = solveBeam(
  beam({
    points: { A: 0, B: 6, C: 10 },
    supports: { A: pin, C: roller() },
    loads: [
      spread(2, 'A', 'C', { case: 'D' }),
      down(10, 'B', { case: 'L' }),
      down(3, 2, { case: 'S' }),
    ],
  }),
);
const results = outcome.kind === 'beam' ? outcome.results : [];

describe('superpose', () => {
  test('adds factored reactions, curves and residuals under its own mark', () => {
    const sum = superpose(
      results,
      [
        { case: 'D', factor: 1.2 },
        { case: 'L', factor: 1.6 },
      ],
      '1.2D + 1.6L',
    );
    expect(sum.mark).toBe('1.2D + 1.6L');
    expect(sum.reactions[0]).toEqual({
      point: 'A',
      x: 0,
      y: expect.closeTo(12 + 6.4, 12),
      moment: null,
      components: [0, expect.closeTo(18.4, 12)],
    });
    expect(sum.reactions[1]!.x).toBeNull();
    expect(valueAt(sum.moment, 6, 'left')).toBeCloseTo(1.2 * 24 + 1.6 * 24, 10);
    expect(sum.residuals.every(isClosed)).toBe(true);
    expect(sum.residuals[1]!.scale).toBeCloseTo(1.2 * 40 + 1.6 * 20, 10);
  });

  test('seeks the extremes of the sum, which are not sums of extremes', () => {
    const sum = superpose(
      results,
      [
        { case: 'D', factor: 1 },
        { case: 'L', factor: 1 },
      ],
      'D + L',
    );
    // V = 14 − 2x is zero at 7, but the load of 10 at 6 takes it below before.
    expect(sum.extremes.moment.max).toEqual({ value: expect.closeTo(48, 10), x: 6 });
  });

  test('breaks where either case does', () => {
    const sum = superpose(
      results,
      [
        { case: 'L', factor: 1 },
        { case: 'S', factor: 1 },
      ],
      'L + S',
    );
    expect(breakpointsOf(sum.shear)).toEqual([0, 2, 6, 10]);
    expect(breakpointsOf(sum.moment)).toEqual([0, 2, 6, 10]);
  });

  test('leaves exactly nothing of a case taken away from itself', () => {
    const sum = superpose(
      results,
      [
        { case: 'L', factor: 0.1 },
        { case: 'L', factor: 0.2 },
        { case: 'L', factor: -0.3 },
      ],
      'none',
    );
    expect(sum.reactions[1]!.y).toBe(0);
    expect(sum.extremes.moment).toEqual({
      max: { value: 0, x: 0 },
      min: { value: 0, x: 0 },
    });
  });

  test('refuses a case without a result, and a sum of nothing', () => {
    expect(() => superpose(results, [{ case: 'W', factor: 1 }], 'W')).toThrow(
      RangeError,
    );
    expect(() => superpose(results, [], 'none')).toThrow(RangeError);
  });
});
