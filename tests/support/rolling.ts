import {
  solverOf,
  type BeamSolver,
  type BeamStructure,
} from '../../src/statics/index.ts';

/** A beam made ready that is known to be solvable. */
export function solverFor(structure: BeamStructure): BeamSolver {
  const outcome = solverOf(structure);
  if (outcome.kind === 'unsolved') throw new Error(outcome.unsolved.reason);
  return outcome;
}
