import { unknownsOf } from '../../statics/index.ts';
import { hingeUnknowns, type CaseContext } from '../case-context.ts';
import type { EquationStep } from '../steps.ts';
import { foundOf } from './narrate-sum.ts';

/** Every reaction and every force through a hinge with the way that it acts: what an equations section ends with. */
export function reactionsFound(context: CaseContext): EquationStep {
  return {
    kind: 'reactions-found',
    found: unknownsOf(context.structure).map((unknown) => foundOf(context, unknown)),
    forHinges: hingeUnknowns(context.structure).map((unknown) =>
      foundOf(context, unknown),
    ),
  };
}
