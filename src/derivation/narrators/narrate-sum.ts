import {
  exactly,
  sumOfForces,
  sumOfMoments,
  type Expression,
  type Figure,
  type Symbol,
} from '../../equation/index.ts';
import { displayUnit, multiplyUnits, pureUnit } from '../../units/index.ts';
import {
  keyOfUnknown,
  valueOfUnknown,
  wholeOf,
  type Part,
  type SolvingStep,
  type Sum,
  type Unknown,
  type WorkedSum,
} from '../../statics/index.ts';
import { pointAt, type CaseContext, type KnownValues } from '../case-context.ts';
import { entriesOf } from '../entries.ts';
import { lengthText, value } from '../printing.ts';
import type { EquationStep, Found, Sense } from '../steps.ts';
import { oppositeSense, senseOf } from '../symbols.ts';
import { solveFor, sumStatement } from './solve-for.ts';

/** The sum's name with its positive sense, as the project counts it. */
export function titleOf(
  { structure, conventions, printing }: CaseContext,
  sum: Sum,
): Expression {
  if (sum.kind === 'moments') {
    const about = pointAt(structure, sum.about) ?? lengthText(printing, sum.about);
    return sumOfMoments(about, conventions.moments.value);
  }
  return sumOfForces(
    sum.along === 'x' ? conventions.horizontal.value : conventions.vertical.value,
  );
}

/** What kind of sum it is, in the words that steps use. */
export function kindOf(sum: Sum): 'moments' | 'forces-x' | 'forces-y' {
  if (sum.kind === 'moments') return 'moments';
  return sum.along === 'x' ? 'forces-x' : 'forces-y';
}

/** `A to H` for a piece; undefined for the whole member. */
export function pieceName(context: CaseContext, part: Part): string | undefined {
  const whole = wholeOf(context.structure);
  if (part.from === whole.from && part.to === whole.to) return undefined;
  const nameAt = (x: number): string =>
    pointAt(context.structure, x) ?? lengthText(context.printing, x);
  return `${nameAt(part.from)} to ${nameAt(part.to)}`;
}

/** A zero that ends a sum: bare. */
export const bareZero: Figure = exactly(0, pureUnit);

/** The value found for an unknown, and how it reads. */
export function foundOf(context: CaseContext, unknown: Unknown): Found {
  const si = valueOfUnknown(context.result, unknown);
  const sense = positiveSense(context, unknown);
  const symbol = context.symbols.unknown(unknown);
  const acting = si < 0 ? oppositeSense(sense) : sense;
  return {
    symbol,
    value: value(context.printing, isCouple(context, unknown) ? 'moment' : 'force', si),
    ...(si === 0 ? {} : { acts: acting }),
    ...(unknown.kind === 'hinge'
      ? { hinge: unknown.point, actsLeft: oppositeSense(acting) }
      : {}),
    isNegative: si < 0,
    isZero: si === 0,
  };
}

/** True for a moment component. */
export function isCouple({ structure }: CaseContext, unknown: Unknown): boolean {
  if (unknown.kind === 'hinge') return false;
  const support = structure.supports.find(({ point }) => point === unknown.point);
  return support?.restraints[unknown.index]?.kind === 'moment';
}

function positiveSense({ structure }: CaseContext, unknown: Unknown): Sense {
  if (unknown.kind === 'hinge') return unknown.component === 'x' ? 'right' : 'up';
  const support = structure.supports.find(({ point }) => point === unknown.point);
  const restraint = support?.restraints[unknown.index];
  return restraint === undefined ? 'up' : senseOf(restraint);
}

/** Why a sum comes next: what drops out of it. */
function whyOf(
  step: WorkedSum,
  clears: readonly Symbol[],
): 'clears-all-but-one' | 'one-unknown-left' {
  return step.sum.kind === 'moments' && clears.length > 0
    ? 'clears-all-but-one'
    : 'one-unknown-left';
}

/** A step that one sum solves. */
export function narrateSum(
  context: CaseContext,
  step: Extract<SolvingStep, { kind: 'single' }>,
  known: KnownValues,
): EquationStep {
  const entries = entriesOf(context, step.part, step.sum, known);
  const found = foundOf(context, step.finds);
  const result = value(
    context.printing,
    isCouple(context, step.finds) ? 'moment' : 'force',
    valueOfUnknown(context.result, step.finds),
  );
  const clears = clearedNow(context, step, known);
  const about =
    step.sum.kind === 'moments'
      ? pointAt(context.structure, step.sum.about)
      : undefined;
  const piece = pieceName(context, step.part);
  return {
    kind: 'sum',
    sum: kindOf(step.sum),
    ...(about === undefined ? {} : { about }),
    ...(piece === undefined ? {} : { piece }),
    clears,
    why: whyOf(step, clears),
    statement: sumStatement(titleOf(context, step.sum), entries, bareZero),
    solution: solveFor({
      symbol: found.symbol,
      entries,
      result,
      numerator: (si) => numeratorFigure(context, step.sum, si),
    }),
    found,
  };
}

/** The unknowns that drop out and are not known yet: the reason for the choice. */
function clearedNow(
  context: CaseContext,
  step: WorkedSum,
  known: KnownValues,
): readonly Symbol[] {
  return step.clears
    .filter((unknown) => !known.has(keyOfUnknown(unknown)))
    .map((unknown) => context.symbols.unknown(unknown));
}

/** The worth of known terms of a sum, in the unit of its terms. */
export function numeratorFigure(
  { printing }: CaseContext,
  sum: Sum,
  si: number,
): Figure {
  if (sum.kind === 'forces') return value(printing, 'force', si);
  const unit = multiplyUnits(
    displayUnit(printing.system, 'force'),
    displayUnit(printing.system, 'length'),
  );
  return { ...value(printing, 'moment', si), unit };
}
