import {
  add,
  divide,
  exact,
  multiply,
  negative,
  subtract,
  times,
  type DoubleDouble,
} from '../linear/double-double.ts';
import type { Acting } from './acting.ts';
import { isRigid, type ElasticModel, type Hold } from './elastic-model.ts';
import { drawnBy, type ExactState } from './elastic-state.ts';

/**
 * What every restraint gives in a state; those straight along the beam are not among them, for the
 * axial problem stands apart. Where one restraint alone holds a movement, it gives
 * what equilibrium asks; where springs stand beside it, they give what their law says and
 * the rigid one the rest.
 */
export function componentsOf(
  model: ElasticModel,
  acting: Acting,
  state: ExactState,
): ReadonlyMap<Hold, DoubleDouble> {
  const components = new Map<Hold, DoubleDouble>();
  for (const [place, joint] of model.joints.entries()) {
    const found = state.joints[place];
    if (found === undefined) continue;
    const turn = place === 0 ? found.turnRight : found.turnLeft;
    share(components, joint.lifting, {
      whole: subtract(found.shearRight, found.shearLeft),
      part: ({ dy }) => exact(dy),
      drawn: (hold) => add(drawnBy(hold, acting, state.slide), times(hold.dy, found.v)),
    });
    share(components, joint.turning, {
      whole: subtract(found.momentLeft, found.momentRight),
      part: () => exact(1),
      drawn: (hold) => add(turn, exact(acting.foot(hold))),
    });
  }
  return components;
}

interface Sharing {
  /** What all of them give together. */
  readonly whole: DoubleDouble;
  /** What one unit of a restraint adds to it. */
  readonly part: (hold: Hold) => DoubleDouble;
  /** How far a spring is drawn out. */
  readonly drawn: (hold: Hold) => DoubleDouble;
}

function share(
  components: Map<Hold, DoubleDouble>,
  holds: readonly Hold[],
  { whole, part, drawn }: Sharing,
): void {
  // The one that takes the rest: the rigid one, else the last spring.
  const last = holds.find(isRigid) ?? holds.at(-1);
  if (last === undefined) return;
  let rest = whole;
  for (const hold of holds) {
    if (hold === last) continue;
    const value = negative(times(hold.stiffness ?? 0, drawn(hold)));
    components.set(hold, value);
    rest = subtract(rest, multiply(value, part(hold)));
  }
  components.set(last, divide(rest, part(last)));
}
