import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { curvePath, pieceValue } from '../../../src/figure/diagrams/curve-path.ts';
import type { PlotScale } from '../../../src/figure/diagrams/curve-path.ts';
import { pointOnCurve } from '../../../src/figure/geometry/trace-path.ts';
import type { Piece } from '../../../src/statics/index.ts';

const scale: PlotScale = { xOf: (x) => 10 + 20 * x, yOf: (value) => -3 * value };
const piece = (...coefficients: readonly number[]): Piece => ({
  start: 1,
  end: 3,
  coefficients,
});

describe('curvePath', () => {
  test('a straight piece is a straight line', () => {
    expect(curvePath({ pieces: [piece(2, 1)] }, scale)).toEqual([
      ['M', 30, -6],
      ['L', 70, -12],
    ]);
  });

  test('a jump is an upright line between two pieces', () => {
    const path = curvePath(
      {
        pieces: [
          { start: 0, end: 1, coefficients: [5] },
          { start: 1, end: 2, coefficients: [-5] },
        ],
      },
      scale,
    );
    expect(path[1]).toEqual(['L', 30, -15]);
    expect(path[2]).toEqual(['L', 30, 15]);
  });

  test('a piece up to the third degree is one Bézier curve and lies on it exactly', () => {
    const coefficient = fc.double({ min: -9, max: 9, noNaN: true });
    fc.assert(
      fc.property(fc.tuple(coefficient, coefficient, coefficient, coefficient), (c) => {
        fc.pre(c[2] !== 0 || c[3] !== 0);
        const of = piece(...c);
        const [start, curve, ...more] = curvePath({ pieces: [of] }, scale);
        expect(more).toEqual([]);
        if (start?.[0] !== 'M' || curve?.[0] !== 'C') throw new Error('not a curve');
        const bezier = [
          { x: start[1], y: start[2] },
          { x: curve[1], y: curve[2] },
          { x: curve[3], y: curve[4] },
          { x: curve[5], y: curve[6] },
        ] as const;
        for (const t of [0, 0.2, 0.5, 0.77, 1]) {
          const at = pointOnCurve(bezier, t);
          const station = (at.x - 10) / 20;
          expect(at.y).toBeCloseTo(scale.yOf(pieceValue(of, station)), 7);
        }
      }),
    );
  });

  test('a piece of the fifth degree is drawn in parts within a hundredth of a point', () => {
    // The shape of a deflection curve under a triangular load, 30 points high.
    const of: Piece = { start: 0, end: 10, coefficients: [0, 7, 0, -0.1, 0, 3e-4] };
    const close: PlotScale = { xOf: (x) => 38 * x, yOf: (value) => value };
    const path = curvePath({ pieces: [of] }, close);
    let from = { x: 0, y: 0 };
    for (const step of path) {
      if (step[0] === 'M') from = { x: step[1], y: step[2] };
      if (step[0] !== 'C') continue;
      const to = { x: step[5], y: step[6] };
      const bezier = [
        from,
        { x: step[1], y: step[2] },
        { x: step[3], y: step[4] },
        to,
      ] as const;
      for (const t of [0.25, 0.5, 0.75]) {
        const at = pointOnCurve(bezier, t);
        expect(Math.abs(at.y - pieceValue(of, at.x / 38))).toBeLessThan(0.01);
      }
      from = to;
    }
    expect(path.length).toBeGreaterThan(6);
  });
});
