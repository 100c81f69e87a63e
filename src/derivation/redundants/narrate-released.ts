import {
  unknownsOf,
  valueOfUnknown,
  type ForceMethod,
  type Release,
} from '../../statics/index.ts';
import { name, type Statement } from '../../equation/index.ts';
import { displayUnit, type Unit } from '../../units/index.ts';
import { loadsOfCase, type CaseContext } from '../case-context.ts';
import { narrateEquations } from '../narrators/narrate-equations.ts';
import { isCouple } from '../narrators/narrate-sum.ts';
import { releasedFigure } from '../pictures/released-figure.ts';
import { value } from '../printing.ts';
import type { EquationStep, Step } from '../steps.ts';
import { perUnit } from './per-unit.ts';
import { baseContext, unitContext } from './released-contexts.ts';

/** What is released and why, drawn; its reactions under the loads; and under each redundant of size 1. */
export function narrateReleased(
  context: CaseContext,
  work: ForceMethod,
): readonly Step[] {
  const hasLoads = loadsOfCase(context.structure, context.mark).length > 0;
  return [
    {
      kind: 'released',
      redundants: work.releases.map(({ unknown, restraint }) => ({
        symbol: context.symbols.unknown(unknown),
        point: unknown.point,
        what: restraint.kind,
        isSpring: restraint.stiffness !== undefined,
      })),
      leaves: work.leaves,
      hasLoads,
    },
    {
      kind: 'figure',
      shows: 'released',
      case: context.mark,
      figure: releasedFigure(context, work),
    },
    ...(hasLoads ? underLoads(baseContext(context, work)) : []),
    ...work.releases.map((release, index) =>
      unitState(context, work, { release, index }),
    ),
  ];
}

/** The sums of the released member, without their closing list: the reactions of the member itself are not found yet. */
function underLoads(base: CaseContext): readonly EquationStep[] {
  return narrateEquations(base).filter(({ kind }) => kind !== 'reactions-found');
}

function unitState(
  context: CaseContext,
  work: ForceMethod,
  { release, index }: { readonly release: Release; readonly index: number },
): Step {
  const unit = unitContext(context, work, index);
  return {
    kind: 'unit-state',
    number: index + 1,
    redundant: context.symbols.unknown(release.unknown),
    what: release.restraint.kind,
    reactions: unitReactions(unit, unitOfRedundant(context, release)),
  };
}

/** The unit in which a redundant prints. */
export function unitOfRedundant(
  { printing }: CaseContext,
  { restraint }: Release,
): Unit {
  return displayUnit(printing.system, restraint.kind === 'moment' ? 'moment' : 'force');
}

/** How each reaction a unit of the redundant comes out, where it is not 0; those that no single sum finds are stated. */
function unitReactions(unit: CaseContext, load: Unit): readonly Statement[] {
  const worked = narrateEquations(unit).flatMap((step) =>
    step.kind === 'sum' && !step.found.isZero ? [{ ...step }] : [],
  );
  const shown = new Set(worked.map(({ found }) => JSON.stringify(found.symbol)));
  const stated = unknownsOf(unit.structure).flatMap((unknown): readonly Statement[] => {
    const symbol = unit.symbols.unknown(unknown);
    const si = valueOfUnknown(unit.result, unknown);
    if (si === 0 || shown.has(JSON.stringify(symbol))) return [];
    const what = isCouple(unit, unknown) ? 'moment' : 'force';
    const of = value(unit.printing, what, si);
    return [{ lines: [{ left: name(symbol), chain: [{ sign: '=', of }] }] }];
  });
  return [...worked.map(({ solution }) => solution), ...stated].map((statement) =>
    perUnit(statement, load),
  );
}
