import {
  keyOfUnknown,
  solvingOrder,
  sumsOfStep,
  termsOfSum,
  unknownsOf,
  valueOfUnknown,
  partsOf,
  type SolvingOrder,
  type SolvingStep,
  type Unknown,
} from '../../statics/index.ts';
import { loadsOfCase, nameShares, type CaseContext } from '../case-context.ts';
import type { EquationStep } from '../steps.ts';
import { narrateAxial } from './narrate-axial.ts';
import { narrateCoupled } from './narrate-coupled.ts';
import { narrateLoads } from './narrate-loads.ts';
import { foundOf, narrateSum, pieceName } from './narrate-sum.ts';

/** The equations of one case in the order in which they can be solved, loads prepared first. */
export function narrateEquations(context: CaseContext): readonly EquationStep[] {
  if (loadsOfCase(context.structure, context.mark).length === 0) {
    return [{ kind: 'no-loads', case: context.mark }];
  }
  const order = solvingOrder(context.structure);
  const all = order.steps.flatMap(sumsOfStep);
  const terms = all.flatMap(({ part, sum }) =>
    termsOfSum(context.structure, context.mark, part, sum),
  );
  const named: CaseContext = { ...context, shareOf: nameShares(context.structure, terms) };
  return [
    ...narrateLoads(named, terms),
    ...takeApart(named),
    ...narrateSteps(named, order),
    reactionsFound(named),
  ];
}

function takeApart(context: CaseContext): readonly EquationStep[] {
  if (context.structure.hinges.length === 0) return [];
  return [
    {
      kind: 'take-apart',
      pieces: partsOf(context.structure).map((part) => pieceName(context, part) ?? ''),
      hinges: context.structure.hinges.map(({ point }) => point),
    },
  ];
}

function narrateSteps(context: CaseContext, order: SolvingOrder): readonly EquationStep[] {
  const known = new Map<string, number>();
  return order.steps.map((step) => {
    const told = narrateStep(context, step, known);
    for (const unknown of step.kind === 'single' ? [step.finds] : step.finds) {
      known.set(keyOfUnknown(unknown), valueOfUnknown(context.result, unknown));
    }
    return told;
  });
}

function narrateStep(
  context: CaseContext,
  step: SolvingStep,
  known: ReadonlyMap<string, number>,
): EquationStep {
  switch (step.kind) {
    case 'single':
      return narrateSum(context, step, known);
    case 'coupled':
      return narrateCoupled(context, step, known);
    case 'axial-sharing':
      return narrateAxial(context, step, known);
  }
}

function reactionsFound(context: CaseContext): EquationStep {
  const hinges = context.structure.hinges.flatMap(({ point }): readonly Unknown[] =>
    (['x', 'y'] as const).map((component) => ({ kind: 'hinge', point, component })),
  );
  return {
    kind: 'reactions-found',
    found: unknownsOf(context.structure).map((unknown) => foundOf(context, unknown)),
    forHinges: hinges.map((unknown) => foundOf(context, unknown)),
  };
}
