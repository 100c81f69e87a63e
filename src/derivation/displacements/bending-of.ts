import { loadsOfCase, type CaseContext } from '../case-context.ts';
import type { Bending, BendingTerm, Worked } from './bending.ts';
import { curvatureTerms } from './curvature-terms.ts';
import { loadTerms, rateOf } from './load-terms.ts';
import { reactionTerm } from './reaction-terms.ts';
import { reactionsIn } from './restraints.ts';
import { partRightOf, stiffnessParts } from './stiffness-along.ts';
import { startTerms, stepTerms } from './step-terms.ts';

/**
 * The moment of a case in singularity functions from the start of a stretch on: reactions and loads as
 * they stand, what is left of the start as the moment and the shear there. Where the stiffness steps, moments
 * are multiplied by E I of the start over E I here: the member is worked as one of the stiffness at its start (the
 * equivalent member of uniform stiffness: Hetényi, J. Appl. Mech. 4, 1937; from memory). The multiplied moment
 * leaps and kinks at the step. A free curvature κ counts as a moment E I κ.
 */
export function bendingOf(context: CaseContext, worked: Worked): Bending {
  const { structure, mark } = context;
  const parts = stiffnessParts(structure);
  const EI = partRightOf(parts, worked.from).EI;
  const isInside = (x: number): boolean => x < worked.to && x >= worked.from;
  const isStart = worked.from === structure.points[0]?.x;
  const loads = loadsOfCase(structure, mark);
  const terms: readonly BendingTerm[] = [
    ...(isStart ? [] : startTerms(context, worked.from)),
    ...reactionsIn(structure.supports)
      .filter(({ support: { x } }) => isInside(x) && (isStart || x > worked.from))
      .flatMap((one) => reactionTerm(context, one, EI)),
    ...loads.flatMap((load) => loadTerms(context, load, { ...worked, EI, isStart })),
    ...stepTerms(context, worked, EI),
    ...curvatureTerms(context, worked, EI),
  ];
  return {
    ...worked,
    EI,
    terms: [...terms].filter(({ size }) => size !== 0).sort((a, b) => a.at - b.at),
    rates: loads.flatMap((load) => rateOf(context, load, worked)),
  };
}
