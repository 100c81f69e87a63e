import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  intensityAt,
  resultantsOf,
  type DistributedLoad,
} from '../../src/statics/index.ts';

/** A vertical load from 2 to 8, its ordinates upward. */
function upward(y1: number, y2: number): DistributedLoad {
  return {
    id: 'w',
    case: 'D',
    kind: 'distributed',
    from: 2,
    to: 8,
    x1: 0,
    x2: 0,
    y1,
    y2,
  };
}

describe('resultantsOf', () => {
  test('takes a uniform load as a rectangle at its middle', () => {
    expect(resultantsOf(upward(-3, -3))).toEqual([
      {
        shape: 'rectangle',
        from: 2,
        to: 8,
        start: 3,
        end: 3,
        direction: [0, -1],
        magnitude: 18,
        x: 5,
      },
    ]);
  });

  test('takes a triangle at a third of its base from the greater end', () => {
    expect(resultantsOf(upward(0, -3))).toEqual([
      {
        shape: 'triangle',
        from: 2,
        to: 8,
        start: 0,
        end: 3,
        direction: [0, -1],
        magnitude: 9,
        x: 6,
      },
    ]);
    expect(resultantsOf(upward(3, 0))).toMatchObject([
      { direction: [0, 1], magnitude: 9, x: 4 },
    ]);
  });

  test('takes a trapezoid as a rectangle and a triangle on it', () => {
    expect(resultantsOf(upward(-5, -2))).toEqual([
      {
        shape: 'rectangle',
        from: 2,
        to: 8,
        start: 2,
        end: 2,
        direction: [0, -1],
        magnitude: 12,
        x: 5,
      },
      {
        shape: 'triangle',
        from: 2,
        to: 8,
        start: 3,
        end: 0,
        direction: [0, -1],
        magnitude: 9,
        x: 4,
      },
    ]);
  });

  test('takes a load that changes sign as two triangles that point opposite ways', () => {
    expect(resultantsOf(upward(-3, 3))).toEqual([
      {
        shape: 'triangle',
        from: 2,
        to: 5,
        start: 3,
        end: 0,
        direction: [0, -1],
        magnitude: 4.5,
        x: 3,
      },
      {
        shape: 'triangle',
        from: 5,
        to: 8,
        start: 0,
        end: 3,
        direction: [0, 1],
        magnitude: 4.5,
        x: 7,
      },
    ]);
  });

  test('takes only the stretch asked for, cut back to the load', () => {
    expect(resultantsOf(upward(0, -3), 0, 4)).toMatchObject([
      {
        shape: 'triangle',
        from: 2,
        to: 4,
        start: 0,
        end: 1,
        magnitude: 1,
        x: 2 + 4 / 3,
      },
    ]);
    expect(resultantsOf(upward(0, -3), 4, 8)).toMatchObject([
      { shape: 'rectangle', from: 4, to: 8, start: 1 },
      { shape: 'triangle', from: 4, to: 8, end: 2 },
    ]);
    expect(resultantsOf(upward(0, -3), 8, 10)).toEqual([]);
  });

  test('points along a slanted load, and takes one that turns by its parts', () => {
    const slanted = { ...upward(-4, -8), x1: 3, x2: 6 };
    expect(resultantsOf(slanted)).toMatchObject([
      { shape: 'rectangle', start: 5, direction: [0.6, -0.8] },
      { shape: 'triangle', end: 5, direction: [0.6, -0.8] },
    ]);
    const turning = { ...upward(0, -3), x1: 2, x2: 2 };
    expect(resultantsOf(turning)).toMatchObject([
      { shape: 'rectangle', direction: [1, 0], magnitude: 12 },
      { shape: 'triangle', direction: [0, -1], magnitude: 9 },
    ]);
  });

  test('gives a load of nothing as a force of nothing, so that it still has its term', () => {
    expect(resultantsOf(upward(0, 0))).toMatchObject([
      { shape: 'rectangle', magnitude: 0 },
    ]);
  });

  test('is statically equal to the load, whatever its shape and stretch', () => {
    const ordinate = fc.integer({ min: -50, max: 50 });
    fc.assert(
      fc.property(
        fc.tuple(ordinate, ordinate, ordinate, ordinate),
        fc.integer({ min: 0, max: 9 }),
        ([x1, x2, y1, y2], cut) => {
          const load: DistributedLoad = { ...upward(y1, y2), x1, x2 };
          const to = 2 + (6 * (cut + 1)) / 10;
          const sums = resultantsOf(load, 0, to).reduce(
            ({ fx, fy, m }, { magnitude, direction, x }) => ({
              fx: fx + magnitude * direction[0],
              fy: fy + magnitude * direction[1],
              m: m + magnitude * direction[1] * x,
            }),
            { fx: 0, fy: 0, m: 0 },
          );
          const [xEnd, yEnd] = intensityAt(load, to);
          const base = to - 2;
          expect(sums.fx).toBeCloseTo(((x1 + xEnd) / 2) * base, 9);
          expect(sums.fy).toBeCloseTo(((y1 + yEnd) / 2) * base, 9);
          // ∫ x q over the base, by Simpson's rule.
          const middle = (2 + to) / 2;
          const simpson =
            (base / 6) * (2 * y1 + 4 * middle * ((y1 + yEnd) / 2) + to * yEnd);
          expect(sums.m).toBeCloseTo(simpson, 8);
        },
      ),
    );
  });
});
