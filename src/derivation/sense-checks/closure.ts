import { keyOfUnknown, solvingOrder, unknownsOf, valueOfUnknown, type Unknown } from '../../statics/index.ts';
import { pointAt, type CaseContext } from '../case-context.ts';
import { entriesOf } from '../entries.ts';
import { bareZero, kindOf, pieceName, titleOf } from '../narrators/narrate-sum.ts';
import { sumStatement } from '../narrators/solve-for.ts';
import { lengthText, valueText } from '../printing.ts';
import { agreementTolerance, type CheckOutcome } from './check-outcome.ts';

/** Equilibrium sums that no step has used: worked with the values found, they must close. */
export function closureChecks(context: CaseContext): readonly CheckOutcome[] {
  const known = allKnown(context);
  return solvingOrder(context.structure).checks.map(({ part, sum }) => {
    const entries = entriesOf(context, part, sum, known);
    const left = entries.reduce((total, entry) => total + entry.worth, 0);
    const scale = entries.reduce((total, entry) => total + Math.abs(entry.worth), 0);
    const kind = kindOf(sum);
    const about =
      sum.kind === 'moments'
        ? (pointAt(context.structure, sum.about) ?? lengthText(context.printing, sum.about))
        : '';
    const piece = pieceName(context, part);
    // The first line of the sum is in symbols; the check needs the numbers alone.
    const numbers = sumStatement(titleOf(context, sum), entries, bareZero).lines.at(-1);
    const statement = {
      lines: numbers === undefined ? [] : [{ ...numbers, left: titleOf(context, sum) }],
    };
    const what = kind === 'moments' ? 'moment' : 'force';
    return {
      fact: {
        kind: 'check',
        check: kind === 'moments' ? 'moments-about' : kind,
        facts: { about, ...(piece === undefined ? {} : { piece }) },
        statement,
      },
      holds: Math.abs(left) <= agreementTolerance * scale,
      finding: `${kind === 'moments' ? `moments about ${about}` : 'the sum of forces'} leave ${valueText(context.printing, what, left)}`,
    };
  });
}

function allKnown({ structure, result }: CaseContext): ReadonlyMap<string, number> {
  const hinges = structure.hinges.flatMap(({ point }): readonly Unknown[] => [
    { kind: 'hinge', point, component: 'x' },
    { kind: 'hinge', point, component: 'y' },
  ]);
  return new Map(
    [...unknownsOf(structure), ...hinges].map((unknown) => [
      keyOfUnknown(unknown),
      valueOfUnknown(result, unknown),
    ]),
  );
}
