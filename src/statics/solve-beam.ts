import { rangesOf } from './choices/ranges-of.ts';
import { settleChoices } from './choices/settle-choices.ts';
import type { BeamOutcome } from './solution.ts';
import { solveStates } from './solve-states.ts';
import type { BeamStructure } from './structure.ts';

/**
 * Solves a beam, every case: the state that stands for it, and the greatest and least of cases whose
 * loads may stand in several ways. What cannot be solved is reported: see `solveStates`.
 *
 * @throws RangeError where the structure is no beam, or its choices are none: see `tidyStructure`, `checkChoices`.
 */
export function solveBeam(structure: BeamStructure): BeamOutcome {
  const stated = solveStates(settleChoices(structure));
  if (stated.kind === 'unsolved') return stated;
  const outcome = rangesOf(structure, solveStates);
  if (outcome.kind === 'unsolved') return outcome;
  return { ...stated, ranges: outcome.ranges };
}
