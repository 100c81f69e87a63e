import type { BeamOutcome, BeamResult } from './solution.ts';
import { solverOf } from './solver-of.ts';
import type { BeamStructure, Load } from './structure.ts';
import { tidyStructure } from './tidy-structure.ts';

/**
 * Solves a beam, every case on its own: reactions, forces through hinges, axial force, shear and
 * moment, exact along the beam, and its displacement where E and I are known. Statics alone does what
 * it can; beyond it two ways are taken and compared (see `solverOf`). A beam that can move, lacks the
 * stiffness that it needs, or on which the two ways disagree, is reported and not solved. Choices
 * and trains are not looked at.
 *
 * @throws RangeError where the structure is no beam: see `tidyStructure`.
 */
export function solveStates(structure: BeamStructure): BeamOutcome {
  const tidy = tidyStructure(structure);
  const solver = solverOf(tidy);
  if (solver.kind === 'unsolved') return solver;
  const loads = new Map<string, Load[]>(tidy.cases.map((mark) => [mark, []]));
  for (const load of tidy.loads) loads.get(load.case)?.push(load);
  const results: BeamResult[] = [];
  for (const mark of tidy.cases) {
    const state = solver.state(mark, loads.get(mark) ?? [], { movementsOf: mark });
    if (state.kind === 'unsolved') return state;
    results.push(state.result);
  }
  const { determinacy, assumesConstantStiffness } = solver;
  return { kind: 'beam', determinacy, results, ranges: [], assumesConstantStiffness };
}
