import type { BarLoad } from './acting.ts';
import type { Bar } from './elastic-model.ts';

/** Work on the four unit movements of a bar's ends: left end up, left end turned, right end up, right end turned. */
export type EndForces = readonly [number, number, number, number];

/**
 * The forces at the ends of a bar that do the same work on its four unit movements as a load
 * does: the opposite of what both ends would have to give if they were built in. The shapes are
 * Hermite's cubics, which are the true ones of a bar of one stiffness, so nothing is approximate.
 * — Przemieniecki, Theory of Matrix Structural Analysis, chapters 4 and 5 (from memory).
 */
export function equivalentForces(load: BarLoad, bar: Bar): EndForces {
  const length = bar.length[0];
  switch (load.kind) {
    case 'force':
      return scaled(shapesAt(load.at, length), load.force);
    case 'couple':
      return scaled(slopesAt(load.at, length), load.couple);
    case 'spread':
      return spreadForces(load, length);
    case 'curvature': {
      // The work of EI·κ on the curvature of each shape: the change of its slope over the stretch.
      const before = slopesAt(load.from, length);
      const after = slopesAt(load.to, length);
      const change = plus(after, scaled(before, -1));
      return scaled(change, bar.EI * load.curvature);
    }
  }
}

/** Abscissa and weights of Gauss's rule of three points, which is exact for powers up to the fifth. */
const gaussPoints = [
  [-Math.sqrt(3 / 5), 5 / 9],
  [0, 8 / 9],
  [Math.sqrt(3 / 5), 5 / 9],
] as const;

function spreadForces(
  { from, to, q1, q2 }: Extract<BarLoad, { kind: 'spread' }>,
  length: number,
): EndForces {
  const half = (to - from) / 2;
  return gaussPoints.reduce<EndForces>(
    (sum, [point, weight]) => {
      const q = ((1 - point) * q1 + (1 + point) * q2) / 2;
      const shapes = shapesAt(from + (1 + point) * half, length);
      return plus(sum, scaled(shapes, q * weight * half));
    },
    [0, 0, 0, 0],
  );
}

/** The deflections at a place under the four unit movements. */
function shapesAt(at: number, length: number): EndForces {
  const t = at / length;
  const r = 1 - t;
  return [
    r * r * (1 + 2 * t),
    length * t * r * r,
    t * t * (3 - 2 * t),
    -length * t * t * r,
  ];
}

/** Their slopes. */
function slopesAt(at: number, length: number): EndForces {
  const t = at / length;
  const r = 1 - t;
  const swing = (6 * t * r) / length;
  return [-swing, r * (1 - 3 * t), swing, t * (3 * t - 2)];
}

function scaled(forces: EndForces, factor: number): EndForces {
  const [a, b, c, d] = forces;
  return [a * factor, b * factor, c * factor, d * factor];
}

function plus(one: EndForces, other: EndForces): EndForces {
  return [one[0] + other[0], one[1] + other[1], one[2] + other[2], one[3] + other[3]];
}
