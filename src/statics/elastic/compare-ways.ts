import type { Agreement } from '../solution.ts';
import type { Acting, BarLoad } from './acting.ts';
import { isRigid, type ElasticModel } from './elastic-model.ts';
import type { ElasticState } from './elastic-state.ts';

/** The part of scale within which two ways agree. */
const agreementTolerance = 1e-9;

/** Stiffnesses are very unequal where one is more than this many times another. */
const usualRatio = 1e4;

/** However ill conditioned the stiffness matrix is, results further apart than this part of scale are no results. */
const widestTolerance = 1e-6;

/** Greatest sizes of a state: forces in N, moments in N·m. */
export interface StateScale {
  readonly force: number;
  readonly moment: number;
}

/**
 * The greatest force and moment at joints and of loads. Moments count as forces over the length of
 * the longest bar and the other way round, so that rounding of the one is not judged by a lack of the other.
 */
export function scaleOf(
  model: ElasticModel,
  acting: Acting,
  { joints }: ElasticState,
): StateScale {
  let [force, moment] = [0, 0];
  for (const joint of joints) {
    force = Math.max(
      force,
      ...[joint.shearLeft, joint.shearRight, joint.force].map(Math.abs),
    );
    moment = Math.max(
      moment,
      ...[joint.momentLeft, joint.momentRight, joint.couple].map(Math.abs),
    );
  }
  for (const load of acting.bars.flat()) {
    force = Math.max(force, forceOf(load));
    moment = Math.max(moment, load.kind === 'couple' ? Math.abs(load.couple) : 0);
  }
  const greatest = Math.max(moment, force * model.reach);
  return { force: greatest / model.reach, moment: greatest };
}

function forceOf(load: BarLoad): number {
  switch (load.kind) {
    case 'force':
      return Math.abs(load.force);
    case 'spread':
      return ((Math.abs(load.q1) + Math.abs(load.q2)) / 2) * (load.to - load.from);
    case 'couple':
    case 'curvature':
      return 0;
  }
}

/** The worst difference of two states over reactions, shears and moments at every joint, as a share of scale. */
export function differenceOf(
  one: ElasticState,
  other: ElasticState,
  scale: StateScale,
): number {
  if (scale.moment === 0) return 0;
  let worst = 0;
  for (const [place, a] of one.joints.entries()) {
    const b = other.joints[place];
    if (b === undefined) return Infinity;
    const forces = [
      a.shearLeft - b.shearLeft,
      a.shearRight - b.shearRight,
      a.force - b.force,
    ];
    const moments = [
      a.momentLeft - b.momentLeft,
      a.momentRight - b.momentRight,
      a.couple - b.couple,
    ];
    for (const difference of forces)
      worst = greater(worst, Math.abs(difference) / scale.force);
    for (const difference of moments)
      worst = greater(worst, Math.abs(difference) / scale.moment);
  }
  return worst;
}

/** The greater of two, and what is no number counts as greater than any. */
function greater(a: number, b: number): number {
  return b > a || Number.isNaN(b) ? (Number.isNaN(b) ? Infinity : b) : a;
}

/**
 * What difference is still agreement: 1e-9 of scale, or that times the condition estimate (1e-6 at
 * most) where one stiffness is more than ten thousand times another, a spring counting as the bar of
 * greatest length that would be as stiff.
 */
export function allowedDifference(model: ElasticModel, condition: number): number {
  if (greatestRatio(model) <= usualRatio * (1 + agreementTolerance))
    return agreementTolerance;
  return Math.min(agreementTolerance * Math.max(1, condition), widestTolerance);
}

function greatestRatio({ bars, joints, reach }: ElasticModel): number {
  let [least, most] = [Infinity, 0];
  for (const { EI } of bars) [least, most] = [Math.min(least, EI), Math.max(most, EI)];
  let ratio = most / least;
  for (const { lifting, turning } of joints) {
    for (const [holds, power] of [
      [lifting, 3],
      [turning, 1],
    ] as const) {
      for (const hold of holds) {
        if (isRigid(hold)) continue;
        const stiffness = (hold.stiffness ?? 0) * reach ** power;
        ratio = Math.max(ratio, stiffness / least, most / stiffness);
      }
    }
  }
  return ratio;
}

/** True where two ways are no further apart than is allowed. */
export function doAgree({ difference, allowed }: Agreement): boolean {
  return difference <= allowed;
}
