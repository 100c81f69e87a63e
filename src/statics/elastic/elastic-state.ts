import {
  add,
  divide,
  exact,
  negative,
  rounded,
  times,
  zero,
  type DoubleDouble,
} from '../linear/double-double.ts';
import type { Acting } from './acting.ts';
import type { Hold } from './elastic-model.ts';

/**
 * What was found at one joint, outside of all loads there; beyond the beam's ends nothing. The ways
 * of solving work with all digits; what leaves them is plain numbers.
 */
export interface JointState<T = number> {
  /** Movement up, m. */
  readonly v: T;
  /** Rotations counterclockwise of the bars on either side, rad; the same but at a hinge. */
  readonly turnLeft: T;
  readonly turnRight: T;
  readonly shearLeft: T;
  readonly shearRight: T;
  readonly momentLeft: T;
  readonly momentRight: T;
}

/** A state of the whole beam: its joints, and its movement along x in m. */
export interface ElasticState<T = number> {
  readonly joints: readonly JointState<T>[];
  readonly slide: T;
}

/** A state with all digits. */
export type ExactState = ElasticState<DoubleDouble>;

/** A way of solving: states under anything that acts, for a slide that is known. */
export type Way = (acting: Acting, slide: DoubleDouble) => ExactState;

/** The deflection at a rigid restraint: its foot's movement, and what the slide lifts it by. */
export function prescribedLift(
  hold: Hold,
  acting: Acting,
  slide: DoubleDouble,
): DoubleDouble {
  const against = drawnBy(hold, acting, slide);
  return against[0] === 0 ? zero : divide(negative(against), exact(hold.dy));
}

/** By how much its foot and the slide of the beam draw a restraint out, the joint held. */
export function drawnBy(hold: Hold, acting: Acting, slide: DoubleDouble): DoubleDouble {
  return add(exact(acting.foot(hold)), times(hold.dx, slide));
}

/** The state in plain numbers. */
export function roundedState({ joints, slide }: ExactState): ElasticState {
  return {
    slide: rounded(slide),
    joints: joints.map((joint) => ({
      v: rounded(joint.v),
      turnLeft: rounded(joint.turnLeft),
      turnRight: rounded(joint.turnRight),
      shearLeft: rounded(joint.shearLeft),
      shearRight: rounded(joint.shearRight),
      momentLeft: rounded(joint.momentLeft),
      momentRight: rounded(joint.momentRight),
    })),
  };
}
