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
  zero,
  type DoubleDouble,
} from '../linear/double-double.ts';
import type { BarLoad } from './acting.ts';
import type { Bar } from './elastic-model.ts';

/** What loads do to a bar that rests on its two ends as a simple span. */
export interface SimpleSpan {
  /** Upward reactions at the ends, N. */
  readonly left: DoubleDouble;
  readonly right: DoubleDouble;
  /** Rotations of the ends against the chord, counterclockwise, rad. */
  readonly turnLeft: DoubleDouble;
  readonly turnRight: DoubleDouble;
}

/** A polynomial of where a force stands, measured from the left end: coefficients of ascending powers. */
type Influence = readonly DoubleDouble[];

/**
 * Makes ready the reactions and end rotations of a bar as a simple span. Each is, for one upward unit force, a known
 * polynomial of where the force stands; a couple takes the slope of that polynomial, a spread load
 * its integral, taken by antiderivatives.
 *
 *      reaction left  −(l − a) / l          rotation left   (2 l² a − 3 l a² + a³) / (6 EI l)
 *      reaction right      −a / l           rotation right  (a³ − l² a) / (6 EI l)
 *
 * — Gere & Timoshenko, Mechanics of Materials, tables of deflections of simple beams (from memory).
 */
export function simpleSpan({
  length,
  EI,
}: Bar): (loads: readonly BarLoad[]) => SimpleSpan {
  const one = exact(1);
  const shorter = divide(one, length);
  const soft = times(6, exact(EI));
  const influences: Readonly<Record<keyof SimpleSpan, Influence>> = {
    left: [negative(one), shorter],
    right: [zero, negative(shorter)],
    turnLeft: [
      zero,
      divide(times(2, length), soft),
      divide(exact(-3), soft),
      divide(shorter, soft),
    ],
    turnRight: [zero, divide(negative(length), soft), zero, divide(shorter, soft)],
  };
  return (loads) => {
    const under = (name: keyof SimpleSpan): DoubleDouble =>
      loads.reduce((sum, load) => {
        if (load.kind === 'curvature') return add(sum, openingOf(load, name, shorter));
        return add(sum, effectOf(load, influences[name]));
      }, zero);
    return {
      left: under('left'),
      right: under('right'),
      turnLeft: under('turnLeft'),
      turnRight: under('turnRight'),
    };
  };
}

function effectOf(
  load: Exclude<BarLoad, { kind: 'curvature' }>,
  influence: Influence,
): DoubleDouble {
  switch (load.kind) {
    case 'force':
      return times(load.force, valueAt(influence, load.at));
    case 'couple': {
      const slope = influence.slice(1).map((c, power) => times(power + 1, c));
      return times(load.couple, valueAt(slope, load.at));
    }
    case 'spread':
      return spreadEffect(load, influence);
  }
}

function valueAt(polynomial: Influence, at: number): DoubleDouble {
  return polynomial.reduceRight((value, c) => add(times(at, value), c), zero);
}

/** ∫ q(s) g(from + s) ds for a load straight from q1 to q2, with q = q1 + (q2 − q1) s / base. */
function spreadEffect(
  { from, to, q1, q2 }: Extract<BarLoad, { kind: 'spread' }>,
  influence: Influence,
): DoubleDouble {
  const base = exactSum(to, -from);
  const rise = exactSum(q2, -q1);
  let sum = zero;
  let reach = base;
  for (const [power, c] of seenFrom(influence, from).entries()) {
    const even = divide(exact(q1), exact(power + 1));
    const rising = divide(rise, exact(power + 2));
    sum = add(sum, multiply(multiply(c, reach), add(even, rising)));
    reach = multiply(reach, base);
  }
  return sum;
}

/** The same polynomial in powers of the distance from another place, by repeated synthetic division. */
function seenFrom(polynomial: Influence, from: number): Influence {
  const shifted = [...polynomial];
  for (let start = 0; start < shifted.length - 1; start += 1)
    for (let power = shifted.length - 2; power >= start; power -= 1)
      shifted[power] = add(
        entryAt(shifted, power),
        times(from, entryAt(shifted, power + 1)),
      );
  return shifted;
}

/** What a free curvature over a stretch turns the ends by: κ ∫ (x/l − 1) dx at the left, κ ∫ x/l dx at the right. */
function openingOf(
  { from, to, curvature }: Extract<BarLoad, { kind: 'curvature' }>,
  name: keyof SimpleSpan,
  shorter: DoubleDouble,
): DoubleDouble {
  if (name === 'left' || name === 'right') return zero;
  const turn = times(curvature, exactSum(to, -from));
  const middle = multiply(times(0.5, exactSum(from, to)), shorter);
  const share = name === 'turnRight' ? middle : subtract(middle, exact(1));
  return multiply(turn, share);
}
