import type { PreferredMethods, Project } from '../project/index.ts';
import {
  closingSums,
  solvingOrder,
  tidyStructure,
  type BeamResult,
  type BeamStructure,
  type Determinacy,
} from '../statics/index.ts';
import { choiceNames } from './arrangements/choice-names.ts';
import type { BeamWork } from './beam-work.ts';
import { nameShares, type CaseContext, type MemberContext } from './case-context.ts';
import { printingOf } from './printing.ts';
import { chooseMethod } from './redundants/choose-method.ts';
import { symbolsOf } from './symbols.ts';

/** What the narrators of a member need, from the project and the solved member. */
export function memberContext(
  project: Project,
  { definition, structure: given, arranged, solution }: BeamWork,
): MemberContext {
  // The solver works on the same, so that stations and directions can be compared as they are.
  const structure = tidyStructure(given);
  return {
    definition,
    structure,
    ...calculationOf(structure, solution.determinacy, project.definition.methods),
    assumesConstantStiffness: solution.assumesConstantStiffness,
    symbols: symbolsOf(structure),
    arranged,
    choiceNames: choiceNames(definition, arranged),
    rolled: solution.rolled ?? [],
    printing: printingOf(project),
    conventions: project.definition.conventions,
    defined: new Map(definition.loads.map((load) => [load.id, load])),
  };
}

/** The order of the sums where statics solves the beam, else the method for its redundants and the sums that must close. */
function calculationOf(
  structure: BeamStructure,
  { redundants, axialOnly }: Determinacy,
  methods: PreferredMethods,
): Pick<MemberContext, 'order' | 'method'> {
  if (redundants === 0 || axialOnly) return { order: solvingOrder(structure) };
  return {
    order: { steps: [], checks: closingSums(structure) },
    method: chooseMethod(structure, methods.continuous),
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
