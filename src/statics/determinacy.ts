import { equilibriumSystem, type EquilibriumSystem } from './equilibrium-system.ts';
import { nameInstability } from './instability.ts';
import {
  conditionOf,
  nullSpaceOf,
  rankOf,
  singularValues,
} from './linear/singular-values.ts';
import type { Determinacy } from './solution.ts';
import type { BeamStructure, Restraint } from './structure.ts';
import { tidyStructure } from './tidy-structure.ts';
import { nearlyUnstableCondition } from './tolerances.ts';

/**
 * Whether statics can solve a beam: unknowns counted against equations, and the rank of the
 * equilibrium system, which tells a redundant from a mechanism where a count of 0 hides both.
 *
 * @throws RangeError where the structure is no beam: see `tidyStructure`.
 */
export function determinacy(structure: BeamStructure): Determinacy {
  const tidy = tidyStructure(structure);
  return determinacyOf(tidy, equilibriumSystem(tidy));
}

/** The same for a tidy structure whose system is already built. */
export function determinacyOf(
  structure: BeamStructure,
  system: EquilibriumSystem,
): Determinacy {
  const decomposition = singularValues(system.rows);
  const rank = rankOf(decomposition);
  const condition = conditionOf(decomposition);
  const equations = system.rows.length;
  const unknowns = system.units.length;
  const redundants = unknowns - rank;
  const stable = rank === equations;
  const counts = {
    unknowns,
    equations,
    degree: unknowns - equations,
    rank,
    redundants,
    mechanisms: equations - rank,
    stable,
    condition,
    nearlyUnstable: stable && condition > nearlyUnstableCondition,
    axialOnly: stable && redundants > 0 && redundants === axialRedundants(structure),
  };
  if (stable) return counts;
  const movements = nullSpaceOf(decomposition);
  return { ...counts, instability: nameInstability(structure, system, movements) };
}

/** True of a restraint that acts straight along the beam: all of these have one and the same column. */
export function actsAlongBeam(restraint: Restraint): boolean {
  return restraint.kind === 'force' && restraint.direction[1] === 0;
}

/**
 * One restraint along x is needed to hold the beam, each further one is redundant by itself. With
 * a foot that moves along x the share depends on EA, which statics does not know: then none counts.
 */
function axialRedundants(structure: BeamStructure): number {
  const along = structure.supports
    .flatMap((support) => support.restraints)
    .filter(actsAlongBeam);
  const moves = along.some((restraint) =>
    (restraint.settlements ?? []).some((settlement) => settlement.value !== 0),
  );
  return moves ? 0 : along.length - 1;
}
