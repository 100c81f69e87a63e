import type { BeamResult } from './solution.ts';
import type { BeamStructure } from './structure.ts';

/** The name of one unknown force: a support's `index`-th restraint, or a force through a hinge. */
export type Unknown =
  | { readonly kind: 'reaction'; readonly point: string; readonly index: number }
  /** What the left piece does to the right piece, positive right or up. */
  | { readonly kind: 'hinge'; readonly point: string; readonly component: 'x' | 'y' };

/** The reaction unknowns, every restraint of every support in their order: the columns of the equilibrium system. */
export function unknownsOf(structure: BeamStructure): readonly Unknown[] {
  return structure.supports.flatMap(({ point, restraints }) =>
    restraints.map((_, index) => ({ kind: 'reaction', point, index }) as const),
  );
}

/** One text for one unknown, for looking it up and telling two apart. */
export function keyOfUnknown(unknown: Unknown): string {
  switch (unknown.kind) {
    case 'reaction':
      return JSON.stringify(['reaction', unknown.point, unknown.index]);
    case 'hinge':
      return JSON.stringify(['hinge', unknown.point, unknown.component]);
  }
}

/**
 * What a result found for an unknown, N or N·m in the unknown's positive sense.
 *
 * @throws RangeError where the result knows no such unknown.
 */
export function valueOfUnknown(result: BeamResult, unknown: Unknown): number {
  const value = lookUp(result, unknown);
  if (value === undefined) throw new RangeError(`no unknown ${keyOfUnknown(unknown)}`);
  return value;
}

function lookUp(result: BeamResult, unknown: Unknown): number | undefined {
  switch (unknown.kind) {
    case 'reaction':
      return result.reactions.find(({ point }) => point === unknown.point)?.components[
        unknown.index
      ];
    case 'hinge':
      return result.hingeForces.find(({ point }) => point === unknown.point)?.[
        unknown.component
      ];
  }
}
