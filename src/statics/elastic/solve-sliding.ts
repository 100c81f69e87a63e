import {
  add,
  divide,
  exact,
  negative,
  subtract,
  times,
  zero,
  type DoubleDouble,
} from '../linear/double-double.ts';
import { atRest, type Acting } from './acting.ts';
import { componentsOf } from './components.ts';
import { isRigid, type ElasticModel } from './elastic-model.ts';
import { drawnBy, type ExactState, type Way } from './elastic-state.ts';

/**
 * Solves by a way where the slide may be unknown: everything is linear in it, so the force left
 * along x with the slide held, and that of a slide of 1 alone, tell the slide that closes the sum.
 */
export function solveSliding(
  model: ElasticModel,
  way: Way,
): (acting: Acting) => ExactState {
  if (!model.slides) {
    const rigid = model.along.find(isRigid);
    return (acting) =>
      way(
        acting,
        rigid === undefined ? zero : exact(0 - rigid.dx * acting.foot(rigid)),
      );
  }
  const rest = atRest(model);
  const resistance = forceAlong(model, rest, way(rest, exact(1)));
  return (acting) => {
    const left = forceAlong(model, acting, way(acting, zero));
    return way(acting, negative(divide(left, resistance)));
  };
}

/** The sum of everything along x in a state, N. */
function forceAlong(
  model: ElasticModel,
  acting: Acting,
  state: ExactState,
): DoubleDouble {
  let sum = exact(acting.push);
  for (const [{ dx }, value] of componentsOf(model, acting, state))
    sum = add(sum, times(dx, value));
  for (const hold of model.along) {
    const pull = times(hold.stiffness ?? 0, drawnBy(hold, acting, state.slide));
    sum = subtract(sum, times(hold.dx, pull));
  }
  return sum;
}
