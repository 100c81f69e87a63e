import {
  derivative,
  evaluatePolynomial,
  shiftOrigin,
  type Polynomial,
} from '../piecewise/polynomial.ts';
import type { BarLoad } from './acting.ts';
import type { Bar } from './elastic-model.ts';

/** What loads do to a bar that rests on its two ends as a simple span. */
export interface SimpleSpan {
  /** Upward reactions at the ends, N. */
  readonly left: number;
  readonly right: number;
  /** Rotations of the ends against the chord, counterclockwise, rad. */
  readonly turnLeft: number;
  readonly turnRight: number;
}

/**
 * Reactions and end rotations of a simple span. Each is, for one upward unit force, a known
 * polynomial of where the force stands; a couple takes the slope of that polynomial, a spread load
 * its integral, taken by antiderivatives.
 *
 *      reaction left  −(l − a) / l          rotation left   (2 l² a − 3 l a² + a³) / (6 EI l)
 *      reaction right      −a / l           rotation right  (a³ − l² a) / (6 EI l)
 *
 * — Clapeyron's theorem of three moments in the form of Gere & Timoshenko, Mechanics of
 * Materials, tables of deflections of simple beams (from memory).
 */
export function simpleSpan(loads: readonly BarLoad[], bar: Bar): SimpleSpan {
  const l = bar.length[0];
  const soft = 6 * bar.EI * l;
  const influences = {
    left: [-1, 1 / l],
    right: [0, -1 / l],
    turnLeft: [0, (2 * l * l) / soft, (-3 * l) / soft, 1 / soft],
    turnRight: [0, (-l * l) / soft, 0, 1 / soft],
  } satisfies Record<keyof SimpleSpan, Polynomial>;
  const under = (name: keyof SimpleSpan): number =>
    loads.reduce((sum, load) => sum + effect(load, influences[name], name, l), 0);
  return {
    left: under('left'),
    right: under('right'),
    turnLeft: under('turnLeft'),
    turnRight: under('turnRight'),
  };
}

function effect(
  load: BarLoad,
  influence: Polynomial,
  name: keyof SimpleSpan,
  length: number,
): number {
  switch (load.kind) {
    case 'force':
      return load.force * evaluatePolynomial(influence, load.at);
    case 'couple':
      return load.couple * evaluatePolynomial(derivative(influence), load.at);
    case 'spread':
      return spreadEffect(load, influence);
    case 'curvature':
      return load.curvature * openingOf(load.from, load.to, name, length);
  }
}

/** ∫ q(s) g(from + s) ds for a load straight from q1 to q2. */
function spreadEffect(
  { from, to, q1, q2 }: Extract<BarLoad, { kind: 'spread' }>,
  influence: Polynomial,
): number {
  const base = to - from;
  const slope = (q2 - q1) / base;
  const local = shiftOrigin(influence, from);
  return local.reduce((sum, c, power) => {
    const constant = (q1 * base ** (power + 1)) / (power + 1);
    const rising = (slope * base ** (power + 2)) / (power + 2);
    return sum + c * (constant + rising);
  }, 0);
}

/** What a curvature of 1 over a stretch turns the ends by: ∫ (x/l − 1) dx at the left, ∫ x/l dx at the right. */
function openingOf(
  from: number,
  to: number,
  name: keyof SimpleSpan,
  length: number,
): number {
  const base = to - from;
  const middle = (from + to) / 2;
  if (name === 'turnLeft') return base * (middle / length - 1);
  return name === 'turnRight' ? (base * middle) / length : 0;
}
