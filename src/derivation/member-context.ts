import type { Project } from '../project/index.ts';
import { solvingOrder, tidyStructure, type BeamResult } from '../statics/index.ts';
import type { BeamWork } from './beam-work.ts';
import { nameShares, type CaseContext, type MemberContext } from './case-context.ts';
import { printingOf } from './printing.ts';
import { symbolsOf } from './symbols.ts';

/** What the narrators of a member need, from the project and the solved member. */
export function memberContext(
  project: Project,
  { definition, structure: given }: BeamWork,
): MemberContext {
  // The solver works on the same, so that stations and directions can be compared as they are.
  const structure = tidyStructure(given);
  return {
    definition,
    structure,
    order: solvingOrder(structure),
    symbols: symbolsOf(structure),
    printing: printingOf(project),
    conventions: project.definition.conventions,
    defined: new Map(definition.loads.map((load) => [load.id, load])),
  };
}

/** The same for one case with the result that is claimed for it. */
export function caseContext(context: MemberContext, result: BeamResult): CaseContext {
  return {
    ...context,
    mark: result.mark,
    result,
    shareOf: nameShares(context.structure, []),
  };
}
