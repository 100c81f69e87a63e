import { type Symbol } from '../../equation/index.ts';
import type { ForceMethod } from '../../statics/index.ts';
import {
  displayUnit,
  divideUnits,
  multiplyUnits,
  type Unit,
} from '../../units/index.ts';
import type { CaseContext } from '../case-context.ts';
import { unitOfRedundant } from './narrate-released.ts';

/** The moment of the released member under the loads (state 0) or a unit of a redundant. */
export function stateMoment(state: number): Symbol {
  return state === 0
    ? {
        letter: 'M',
        subscript: '0',
        meaning: 'bending moment of the released member under the loads',
      }
    : {
        letter: 'm',
        subscript: String(state),
        meaning: `bending moment of the released member under a unit of redundant ${state}`,
      };
}

/** The movement at a release in one state, in the sense of its redundant. */
export function movementSymbol(release: number, state: number): Symbol {
  return {
    letter: 'δ',
    subscript: `${release}${state}`,
    meaning: `movement at release ${release} of the released member ${state === 0 ? 'under the loads' : `under a unit of redundant ${state}`}`,
  };
}

/** The unit of a state's moment: a moment, or a moment a unit of the redundant. */
export function unitOfMoment(
  context: CaseContext,
  work: ForceMethod,
  state: number,
): Unit {
  const moment = displayUnit(context.printing.system, 'moment');
  const release = work.releases[state - 1];
  return release === undefined
    ? moment
    : divideUnits(moment, unitOfRedundant(context, release));
}

/** The unit of E I δ: of both moments and a length. */
export function unitOfMovement(
  context: CaseContext,
  work: ForceMethod,
  [j, k]: readonly [number, number],
): Unit {
  return multiplyUnits(
    multiplyUnits(unitOfMoment(context, work, k), unitOfMoment(context, work, j)),
    displayUnit(context.printing.system, 'length'),
  );
}
