import { describe, expect, test } from 'vitest';
import {
  envelope,
  envelopeCurves,
  solveBeam,
  valueAt,
} from '../../src/statics/index.ts';
import { beam, down, pin, roller } from '../support/beam.ts';

const outcome = solveBeam(
  beam({
    points: { A: 0, B: 6, C: 9 },
    supports: { A: pin, B: roller() },
    loads: [
      down(9, 2, { case: 'L1' }),
      down(4, 'C', { case: 'L2' }),
      down(9, 2, { case: 'L3' }),
    ],
  }),
);
const results = outcome.kind === 'beam' ? outcome.results : [];

describe('envelope', () => {
  test('names the result that governs each extreme, and where', () => {
    const { moment, shear } = envelope(results);
    expect(moment.max).toEqual({ value: 12, x: 2, result: 'L1' });
    expect(moment.min).toEqual({ value: -12, x: 6, result: 'L2' });
    expect(shear.max).toEqual({ value: 6, x: 0, result: 'L1' });
  });

  test('lets the first of equal results govern', () => {
    expect(envelope([results[2]!, results[0]!]).moment.max.result).toBe('L3');
  });

  test('of no results does not exist', () => {
    expect(() => envelope([])).toThrow(RangeError);
  });
});

describe('envelopeCurves', () => {
  test('hold the greatest and the least at every station', () => {
    const { max, min } = envelopeCurves(results, 'moment');
    for (const x of [0, 1, 2, 4, 5.5, 6, 8, 9]) {
      const values = results.map((result) => valueAt(result.moment, x, 'left'));
      expect(valueAt(max, x, 'left')).toBeCloseTo(Math.max(...values), 10);
      expect(valueAt(min, x, 'left')).toBeCloseTo(Math.min(...values), 10);
    }
  });
});
