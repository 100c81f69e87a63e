import {
  keyOfUnknown,
  partsOf,
  sumsOfStep,
  termsOfSum,
  unknownsOf,
  valueOfUnknown,
  type Part,
  type Sum,
  type SumTerm,
} from '../../statics/index.ts';
import {
  hingeUnknowns,
  keyOfShape,
  pointAt,
  type CaseContext,
  type KnownValues,
} from '../case-context.ts';
import { entriesOf, entriesOfTerms, type Entry } from '../entries.ts';
import { bareZero, kindOf, pieceName, titleOf } from '../narrators/narrate-sum.ts';
import { sumStatement } from '../narrators/solve-for.ts';
import { lengthText, valueText } from '../printing.ts';
import { agreementTolerance, type CheckOutcome } from './check-outcome.ts';

/** Equilibrium sums that no step has used: worked with the values found, they must close. */
export function closureChecks(context: CaseContext): readonly CheckOutcome[] {
  const known = allKnown(context);
  const { steps, checks } = context.order;
  const prepared = preparedShapes(
    steps
      .flatMap(sumsOfStep)
      .flatMap(({ part, sum }) =>
        termsOfSum(context.structure, context.mark, part, sum),
      ),
  );
  return checks.map(({ part, sum }) => {
    const terms = termsMetAbove(context, part, { sum, prepared });
    const entries = entriesOfTerms(context, sum, terms, known);
    const kind = kindOf(sum);
    const piece = pieceName(context, part);
    // The first line of the sum is in symbols; the check needs the numbers alone.
    const numbers = sumStatement(titleOf(context, sum), entries, bareZero).lines.at(-1);
    const statement = {
      lines: numbers === undefined ? [] : [{ ...numbers, left: titleOf(context, sum) }],
    };
    return {
      fact: {
        kind: 'check',
        check: kind === 'moments' ? 'moments-about' : kind,
        facts: {
          about: aboutText(context, sum),
          ...(piece === undefined ? {} : { piece }),
        },
        statement,
      },
      ...closed(context, sum, entries),
    };
  });
}

/** Every sum that the steps have used closes with the values claimed: no step prints it, and a wrong value cannot pass it. */
export function usedSumsClose(context: CaseContext): readonly CheckOutcome[] {
  const known = allKnown(context);
  return context.order.steps
    .flatMap(sumsOfStep)
    .map(({ part, sum }) => closed(context, sum, entriesOf(context, part, sum, known)));
}

function closed(
  context: CaseContext,
  sum: Sum,
  entries: readonly Entry[],
): CheckOutcome {
  const left = entries.reduce((total, entry) => total + entry.worth, 0);
  const scale = entries.reduce((total, entry) => total + Math.abs(entry.worth), 0);
  const isMoments = sum.kind === 'moments';
  const name = isMoments
    ? `moments about ${aboutText(context, sum)}`
    : `the forces along ${sum.along}`;
  return {
    holds: Math.abs(left) <= agreementTolerance * scale,
    finding: `${name} leave ${valueText(context.printing, isMoments ? 'moment' : 'force', left)}`,
  };
}

function aboutText({ structure, printing }: CaseContext, sum: Sum): string {
  if (sum.kind !== 'moments') return '';
  return pointAt(structure, sum.about) ?? lengthText(printing, sum.about);
}

function preparedShapes(terms: readonly SumTerm[]): ReadonlySet<string> {
  return new Set(
    terms.flatMap(({ source, resultant }) => shapeKey(source, resultant) ?? []),
  );
}

function shapeKey(
  source: SumTerm['source'],
  resultant: SumTerm['resultant'],
): string | undefined {
  if (source.kind !== 'load' || resultant === undefined) return undefined;
  return `${source.id} ${keyOfShape(resultant)}`;
}

/**
 * The terms of a check on a part, its distributed loads cut as the steps have cut them, so that
 * every resultant in it has been worked out above: piece by piece, if the part as a whole would
 * bring up others. What passes an inner hinge cancels and is left out.
 */
function termsMetAbove(
  { structure, mark }: CaseContext,
  part: Part,
  { sum, prepared }: { readonly sum: Sum; readonly prepared: ReadonlySet<string> },
): readonly SumTerm[] {
  const whole = termsOfSum(structure, mark, part, sum);
  const isMet = ({ source, resultant }: SumTerm): boolean => {
    const key = shapeKey(source, resultant);
    return key === undefined || prepared.has(key);
  };
  if (whole.every(isMet)) return whole;
  const inside = partsOf(structure).filter(
    ({ from, to }) => from >= part.from && to <= part.to,
  );
  const byPiece = inside
    .flatMap((piece) => termsOfSum(structure, mark, piece, sum))
    .filter(
      ({ source, x }) => source.kind !== 'hinge' || x <= part.from || x >= part.to,
    );
  return byPiece.every(isMet) ? byPiece : whole;
}

function allKnown({ structure, result }: CaseContext): KnownValues {
  return new Map(
    [...unknownsOf(structure), ...hingeUnknowns(structure)].map((unknown) => [
      keyOfUnknown(unknown),
      valueOfUnknown(result, unknown),
    ]),
  );
}
