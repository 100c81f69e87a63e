import { rangesOf } from './choices/ranges-of.ts';
import { settleChoices } from './choices/settle-choices.ts';
import { rollTrains, standTrains } from './moving/roll-trains.ts';
import type { BeamOutcome } from './solution.ts';
import { solveStates } from './solve-states.ts';
import type { BeamStructure } from './structure.ts';

/**
 * Solves a beam, every case: the state that stands for it, and the greatest and least of cases whose
 * loads may stand in several ways. What cannot be solved is reported: see `solveStates`.
 *
 * @throws RangeError where the structure is no beam, or its choices or trains are none: see `tidyStructure`,
 *   `checkChoices`, `checkTrains`.
 */
export function solveBeam(structure: BeamStructure): BeamOutcome {
  const rolling = rollTrains(structure);
  if (rolling.kind === 'unsolved') return rolling;
  const rolled = rolling.cases;
  const stated = solveStates(settleChoices(standTrains(structure, rolled)));
  if (stated.kind === 'unsolved') return stated;
  const outcome = rangesOf(structure, solveStates, rolled);
  if (outcome.kind === 'unsolved') return outcome;
  return {
    ...stated,
    ranges: outcome.ranges,
    ...(rolled.length === 0 ? {} : { rolled }),
  };
}
