import type { Acting, BarLoad } from './acting.ts';
import { isRigid, type ElasticModel } from './elastic-model.ts';
import type { ElasticState, JointState } from './elastic-state.ts';

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

/** Forces below this part of what the joints' movements would take if they bent the bars are only rounding of what was given. */
const roundingOfGiven = 1e-13;

/**
 * The greatest force and moment at joints and of loads. Moments count as forces over the length of
 * the longest bar and the other way round, so that rounding of the one is not judged by a lack of the
 * other. Where settlements move a beam without straining it, the scale is what would bend it as far.
 */
export function scaleOf(
  model: ElasticModel,
  acting: Acting,
  { joints }: ElasticState,
): StateScale {
  let [force, moment] = [0, 0];
  for (const { shearLeft, shearRight, momentLeft, momentRight } of joints) {
    const [up, turn] = [shearRight - shearLeft, momentLeft - momentRight];
    force = Math.max(force, ...[shearLeft, shearRight, up].map(Math.abs));
    moment = Math.max(moment, ...[momentLeft, momentRight, turn].map(Math.abs));
  }
  for (const load of acting.bars.flat()) {
    force = Math.max(force, forceOf(load));
    moment = Math.max(moment, load.kind === 'couple' ? Math.abs(load.couple) : 0);
  }
  const found = Math.max(moment, force * model.reach);
  const bending = bendingScale(model, joints);
  const greatest = found <= roundingOfGiven * bending ? bending : found;
  return { force: greatest / model.reach, moment: greatest };
}

/** The greatest moment that would turn an end of a bar as far as it has turned. */
function bendingScale({ bars }: ElasticModel, joints: ElasticState['joints']): number {
  return bars.reduce((most, { EI, length }, place) => {
    const turns = [joints[place]?.turnRight ?? 0, joints[place + 1]?.turnLeft ?? 0];
    return Math.max(most, ...turns.map((turn) => (Math.abs(turn) * EI) / length[0]));
  }, 0);
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
    const [left, right] = [apart(a, b, 'shearLeft'), apart(a, b, 'shearRight')];
    const [before, after] = [apart(a, b, 'momentLeft'), apart(a, b, 'momentRight')];
    for (const force of [left, right, right - left])
      worst = greater(worst, Math.abs(force) / scale.force);
    for (const moment of [before, after, after - before])
      worst = greater(worst, Math.abs(moment) / scale.moment);
  }
  return worst;
}

function apart(one: JointState, other: JointState, name: keyof JointState): number {
  return one[name] - other[name];
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
