import { actsAlongBeam, determinacy } from './determinacy.ts';
import type { BeamStructure, Restraint } from './structure.ts';

/**
 * How many forces and moments across a stable beam equilibrium leaves open: all redundants less those
 * among the restraints straight along it, which bend nothing.
 */
export function bendingRedundants(structure: BeamStructure): number {
  const along = structure.supports
    .flatMap(({ restraints }) => restraints)
    .filter(actsAlongBeam).length;
  return Math.max(0, determinacy(structure).redundants - Math.max(0, along - 1));
}

/** True of a restraint that gives way in proportion to its force. */
export function isFlexible({ stiffness }: Restraint): boolean {
  return stiffness !== undefined;
}

/**
 * True where nothing bends an indeterminate beam in a case: no loads, no foot that moves, no
 * curvature of its own.
 */
export function isIdle(structure: BeamStructure, mark: string): boolean {
  const { loads, supports, curvatures = [], choices = [], trains = [] } = structure;
  return (
    ![...loads, ...choices, ...trains].some((one) => one.case === mark) &&
    !curvatures.some((one) => one.case === mark && one.curvature !== 0) &&
    !supports.some(({ restraints }) =>
      restraints.some(({ settlements = [] }) =>
        settlements.some((one) => one.case === mark && one.value !== 0),
      ),
    )
  );
}
