import {
  add,
  divide,
  exact,
  multiply,
  negative,
  zero,
  type DoubleDouble,
} from '../linear/double-double.ts';
import type { Acting } from './acting.ts';
import { isRigid, type ElasticModel, type Hold } from './elastic-model.ts';

/** What a way of solving found at one joint, outside of all loads there; beyond the beam's ends nothing. */
export interface JointState {
  /** Movement up, m. */
  readonly v: number;
  /** Rotations counterclockwise of the bars on either side, rad; the same but at a hinge. */
  readonly turnLeft: number;
  readonly turnRight: number;
  readonly shearLeft: number;
  readonly shearRight: number;
  readonly momentLeft: number;
  readonly momentRight: number;
  /** What the support gives: upward force and counterclockwise couple, N and N·m. */
  readonly force: number;
  readonly couple: number;
}

/** A state of the whole beam. */
export interface ElasticState {
  readonly joints: readonly JointState[];
  /** Movement of the beam along x, m. */
  readonly slide: number;
}

/** A way of solving: states under anything that acts, for a slide that is known. */
export type Way = (acting: Acting, slide: number) => ElasticState;

/** The deflection at a rigid restraint: its foot's movement, and what the slide lifts it by. */
export function prescribedLift(
  hold: Hold,
  acting: Acting,
  slide: number,
): DoubleDouble {
  const against = add(exact(acting.foot(hold)), multiply(exact(hold.dx), exact(slide)));
  return against[0] === 0 ? zero : divide(negative(against), exact(hold.dy));
}

/**
 * The components of every support, by support and restraint; those straight along the beam are 0
 * here, for the axial problem stands apart. Where one restraint alone holds a movement, it gives
 * what equilibrium asks; where springs stand beside it, they give what their law says and
 * the rigid one the rest.
 */
export function componentsOf(
  model: ElasticModel,
  acting: Acting,
  state: ElasticState,
): ReadonlyMap<Hold, number> {
  const components = new Map<Hold, number>();
  for (const [place, joint] of model.joints.entries()) {
    const found = state.joints[place];
    if (found === undefined) continue;
    const { v, turnLeft, turnRight, force, couple } = found;
    const turn = place === 0 ? turnRight : turnLeft;
    share(components, joint.lifting, {
      whole: force,
      part: ({ dy }) => dy,
      law: (hold) => hold.dx * state.slide + hold.dy * v + acting.foot(hold),
    });
    share(components, joint.turning, {
      whole: couple,
      part: () => 1,
      law: (hold) => turn + acting.foot(hold),
    });
  }
  return components;
}

interface Sharing {
  /** What all of them give together. */
  readonly whole: number;
  /** What one unit of a restraint adds to it. */
  readonly part: (hold: Hold) => number;
  /** How far a spring is drawn out. */
  readonly law: (hold: Hold) => number;
}

function share(
  components: Map<Hold, number>,
  holds: readonly Hold[],
  { whole, part, law }: Sharing,
): void {
  // The one that takes the rest: the rigid one, else the last spring.
  const last = holds.find(isRigid) ?? holds.at(-1);
  if (last === undefined) return;
  let rest = whole;
  for (const hold of holds) {
    if (hold === last) continue;
    const value = -(hold.stiffness ?? 0) * law(hold);
    components.set(hold, value);
    rest -= value * part(hold);
  }
  components.set(last, rest / part(last));
}

/** The sum of everything along x in a state, N. */
function forceAlong(model: ElasticModel, acting: Acting, state: ElasticState): number {
  let sum = acting.push;
  for (const [hold, value] of componentsOf(model, acting, state))
    sum += hold.dx * value;
  for (const hold of model.along)
    sum -=
      hold.dx * (hold.stiffness ?? 0) * (hold.dx * state.slide + acting.foot(hold));
  return sum;
}

/**
 * Solves by a way where the slide may be unknown: everything is linear in it, so the force left
 * along x with the slide held, and that of a slide of 1 alone, tell the slide that closes the sum.
 */
export function solveSliding(
  model: ElasticModel,
  way: Way,
  rest: Acting,
): (acting: Acting) => ElasticState {
  if (!model.slides) {
    const rigid = model.along.find(isRigid);
    return (acting) =>
      way(acting, rigid === undefined ? 0 : 0 - rigid.dx * acting.foot(rigid));
  }
  const resistance = forceAlong(model, rest, way(rest, 1));
  return (acting) => {
    const held = way(acting, 0);
    return way(acting, 0 - forceAlong(model, acting, held) / resistance);
  };
}
