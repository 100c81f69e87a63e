import {
  add,
  divide,
  entryAt,
  exact,
  exactSum,
  multiply,
  negative,
  subtract,
  times,
  type DoubleDouble,
} from '../linear/double-double.ts';
import type { BarLoad } from './acting.ts';
import { four, nothing, type Four } from './four.ts';
import type { Bar } from './elastic-model.ts';

/**
 * The forces at the ends of a bar that do the same work on its four unit movements as a load
 * does: the opposite of what both ends would have to give if they were built in. The shapes are
 * Hermite's cubics, which are the true ones of a bar of one stiffness, so nothing is approximate.
 * — Przemieniecki, Theory of Matrix Structural Analysis, chapters 4 and 5 (from memory).
 */
export function equivalentForces(load: BarLoad, { length, EI }: Bar): Four {
  switch (load.kind) {
    case 'force':
      return scaled(shapesAt(exact(load.at), length), exact(load.force));
    case 'couple':
      return scaled(slopesAt(exact(load.at), length), exact(load.couple));
    case 'spread':
      return spreadForces(load, length);
    case 'curvature': {
      // The work of EI·κ on the curvature of each shape: the change of its slope over the stretch.
      const before = slopesAt(exact(load.from), length);
      const after = slopesAt(exact(load.to), length);
      const bending = multiply(exact(EI), exact(load.curvature));
      return scaled(plus(after, scaled(before, exact(-1))), bending);
    }
  }
}

/** Weights, in ninetieths, of Boole's rule at the quarters of a stretch: exact for powers up to the fifth. */
const weights = [7, 32, 12, 32, 7];

function spreadForces(
  { from, to, q1, q2 }: Extract<BarLoad, { kind: 'spread' }>,
  length: DoubleDouble,
): Four {
  const base = exactSum(to, -from);
  const rise = exactSum(q2, -q1);
  return weights.reduce<Four>((sum, weight, quarter) => {
    const at = add(exact(from), times(quarter / 4, base));
    const q = add(exact(q1), times(quarter / 4, rise));
    const part = divide(multiply(times(weight, q), base), exact(90));
    return plus(sum, scaled(shapesAt(at, length), part));
  }, nothing);
}

const one = exact(1);

/** The deflections at a place under the four unit movements. */
function shapesAt(at: DoubleDouble, length: DoubleDouble): Four {
  const t = divide(at, length);
  const r = subtract(one, t);
  const [tt, rr] = [multiply(t, t), multiply(r, r)];
  return [
    multiply(rr, add(one, times(2, t))),
    multiply(length, multiply(t, rr)),
    multiply(tt, subtract(exact(3), times(2, t))),
    negative(multiply(length, multiply(tt, r))),
  ];
}

/** Their slopes. */
function slopesAt(at: DoubleDouble, length: DoubleDouble): Four {
  const t = divide(at, length);
  const r = subtract(one, t);
  const swing = divide(times(6, multiply(t, r)), length);
  return [
    negative(swing),
    multiply(r, subtract(one, times(3, t))),
    swing,
    multiply(t, subtract(times(3, t), exact(2))),
  ];
}

function scaled(forces: Four, factor: DoubleDouble): Four {
  const [a, b, c, d] = forces;
  return [
    multiply(a, factor),
    multiply(b, factor),
    multiply(c, factor),
    multiply(d, factor),
  ];
}

function plus(some: Four, others: Four): Four {
  return four((end) => add(entryAt(some, end), entryAt(others, end)));
}
