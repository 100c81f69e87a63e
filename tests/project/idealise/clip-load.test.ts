import { describe, expect, test } from 'vitest';
import fc from 'fast-check';
import { clipLoad } from '../../../src/project/idealise/clip-load.ts';

const varying = {
  id: 'w',
  case: 'L',
  kind: 'distributed',
  from: 2,
  to: 10,
  x1: 0,
  y1: 0,
  x2: 800,
  y2: -1600,
} as const;

describe('a distributed load between two stations', () => {
  test('keeps on its straight line where it is cut', () => {
    expect(clipLoad(varying, { from: 4, to: 6 })).toEqual({
      ...varying,
      from: 4,
      to: 6,
      x1: 200,
      y1: -400,
      x2: 400,
      y2: -800,
    });
  });

  test('is itself where it lies within, and nothing where it does not reach', () => {
    expect(clipLoad(varying, { from: 0, to: 10 })).toBe(varying);
    expect(clipLoad(varying, { from: 0, to: 2 })).toBeUndefined();
    expect(clipLoad(varying, { from: 10, to: 14 })).toBeUndefined();
  });

  test('keeps its sum and its moment however it is cut', () => {
    const size = fc.double({ min: -1e5, max: 1e5, noNaN: true });
    const station = fc.double({ min: 0, max: 12, noNaN: true });
    fc.assert(
      fc.property(size, size, station, (y1, y2, cut) => {
        const load = { ...varying, y1, y2 };
        const parts = [
          clipLoad(load, { from: 0, to: cut }),
          clipLoad(load, { from: cut, to: 12 }),
        ].flatMap((part) => part ?? []);
        const scale = 1e-9 * (Math.abs(y1) + Math.abs(y2) + 1) * 100;
        expect(Math.abs(sum(parts) - sum([load]))).toBeLessThan(scale);
        expect(Math.abs(moment(parts) - moment([load]))).toBeLessThan(scale);
      }),
    );
  });
});

interface Trapezoid {
  readonly from: number;
  readonly to: number;
  readonly y1: number;
  readonly y2: number;
}

const sum = (loads: readonly Trapezoid[]): number =>
  loads.reduce((all, { from, to, y1, y2 }) => all + ((to - from) * (y1 + y2)) / 2, 0);

/** About the origin: a trapezoid as two triangles, their centroids at the third points. */
const moment = (loads: readonly Trapezoid[]): number =>
  loads.reduce((all, { from, to, y1, y2 }) => {
    const half = (to - from) / 2;
    return (
      all + half * y1 * (from + (to - from) / 3) + half * y2 * (to - (to - from) / 3)
    );
  }, 0);
