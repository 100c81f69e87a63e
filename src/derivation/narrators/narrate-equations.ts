import {
  keyOfUnknown,
  sumsOfStep,
  termsOfSum,
  valueOfUnknown,
  partsOf,
  type Load,
  type SolvingOrder,
  type SolvingStep,
} from '../../statics/index.ts';
import {
  hingeUnknowns,
  loadsOfCase,
  nameShares,
  type CaseContext,
} from '../case-context.ts';
import { asGiven } from '../printing.ts';
import type { EquationStep } from '../steps.ts';
import { narrateAxial } from './narrate-axial.ts';
import { narrateCoupled } from './narrate-coupled.ts';
import { narrateLoads } from './narrate-loads.ts';
import { narrateSum, pieceName } from './narrate-sum.ts';
import { reactionsFound } from './reactions-found.ts';

/** The equations of one case in the order in which they can be solved, loads prepared first. */
export function narrateEquations(context: CaseContext): readonly EquationStep[] {
  if (loadsOfCase(context.structure, context.mark).length === 0)
    return [narrateNoLoads(context)];
  const { order } = context;
  const all = order.steps.flatMap(sumsOfStep);
  const terms = all.flatMap(({ part, sum }) =>
    termsOfSum(context.structure, context.mark, part, sum),
  );
  const named: CaseContext = {
    ...context,
    shareOf: nameShares(context.structure, terms),
  };
  return [
    ...takeApart(named),
    ...narrateLoads(named, terms),
    ...narrateSteps(named, order),
    reactionsFound(named),
  ];
}

/** Cases without loads: nothing acts, and supports that settle and warmth move a determinate member without force. */
export function narrateNoLoads(
  { definition, mark }: Pick<CaseContext, 'definition' | 'mark'>,
  cases: readonly string[] = [mark],
): EquationStep {
  return {
    kind: 'no-loads',
    cases,
    isWarm: definition.temperatures.some((one) => one.case === mark),
    settlements: definition.supports.flatMap(({ point, settlement }) =>
      settlement?.case === mark ? [{ point, value: asGiven(settlement.value) }] : [],
    ),
  };
}

function takeApart(context: CaseContext): readonly EquationStep[] {
  const { structure, symbols } = context;
  if (structure.hinges.length === 0) return [];
  const isAtHinge = (load: Load): boolean =>
    load.kind === 'point' && structure.hinges.some(({ x }) => x === load.x);
  return [
    {
      kind: 'take-apart',
      pieces: partsOf(structure).map((part) => pieceName(context, part) ?? ''),
      hinges: structure.hinges.map(({ point }) => point),
      forces: hingeUnknowns(structure).map((unknown) => ({
        symbol: symbols.unknown(unknown),
        sense: unknown.component === 'x' ? 'right' : 'up',
      })),
      atHinges: loadsOfCase(structure, context.mark)
        .filter(isAtHinge)
        .map(({ id }) => symbols.load(id)),
    },
  ];
}

function narrateSteps(
  context: CaseContext,
  order: SolvingOrder,
): readonly EquationStep[] {
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
