import {
  breakpointsOf,
  curvesFound,
  sizeOf,
  valueAt,
  type CaseFactor,
  type EntryResult,
  type RangeResult,
} from '../../statics/index.ts';
import { pointAt, type MemberContext } from '../case-context.ts';
import { componentEnds } from '../narrators/reaction-components.ts';
import { lengthText, valueText } from '../printing.ts';
import { agree, type CheckOutcome } from './check-outcome.ts';

/** A combination without a single state, with what it is made of. */
export interface SummedRange {
  readonly cases: readonly EntryResult[];
  readonly factors: readonly CaseFactor[];
  readonly range: RangeResult;
}

/** The greatest and the least of a combination are the factored sums of those of its cases: reactions, and shear and moment wherever the curves break. */
export function rangeAdds(
  context: MemberContext,
  of: SummedRange,
): readonly CheckOutcome[] {
  return (['max', 'min'] as const).flatMap((sense) => [
    ...reactionsAdd(context, of, sense),
    ...curvesAdd(context, of, sense),
  ]);
}

type Sense = 'max' | 'min';

/** Σ factor · end of each case: of the other end where the factor is negative. */
function summed(
  { cases, factors }: SummedRange,
  sense: Sense,
  read: (found: EntryResult, sense: Sense) => number,
): { readonly total: number; readonly scale: number } {
  const merged = new Map<string, number>();
  for (const { case: mark, factor } of factors)
    merged.set(mark, (merged.get(mark) ?? 0) + factor);
  const parts = [...merged].map(([mark, factor]) => {
    const found = cases.find((one) => one.mark === mark);
    const other = sense === 'max' ? 'min' : 'max';
    return found === undefined ? 0 : factor * read(found, factor < 0 ? other : sense);
  });
  return {
    total: parts.reduce((all, part) => all + part, 0),
    scale: parts.reduce((all, part) => all + Math.abs(part), 0),
  };
}

function reactionsAdd(
  { structure, printing }: MemberContext,
  of: SummedRange,
  sense: Sense,
): readonly CheckOutcome[] {
  return structure.supports.flatMap(({ point }) =>
    (['x', 'y', 'moment'] as const).map((kind) => {
      const read = (found: EntryResult, end: Sense): number =>
        componentEnds(found, { point, kind })[end];
      const claimed = read(of.range, sense);
      const { total, scale } = summed(of, sense, read);
      const what = kind === 'moment' ? 'moment' : 'force';
      return {
        holds: agree(total, claimed, scale),
        finding: `the ${words[sense]} reaction at ${point} is ${valueText(printing, what, claimed)}, but its cases add up to ${valueText(printing, what, total)}`,
      };
    }),
  );
}

const words = { max: 'greatest', min: 'least' } as const;

function curvesAdd(
  { structure, printing }: MemberContext,
  of: SummedRange,
  sense: Sense,
): readonly CheckOutcome[] {
  return (['shear', 'moment'] as const).flatMap((what) => {
    const curve = of.range[what][sense];
    const size = sizeOf(curve);
    const kind = what === 'moment' ? 'moment' : 'force';
    return breakpointsOf(curve).flatMap((x) =>
      (['left', 'right'] as const).map((side): CheckOutcome => {
        const claimed = valueAt(curve, x, side);
        const { total, scale } = summed(of, sense, (found, end) =>
          valueAt(curvesFound(found, what)[end], x, side),
        );
        const place = pointAt(structure, x) ?? lengthText(printing, x);
        return {
          holds: agree(total, claimed, Math.max(scale, size)),
          finding: `the ${words[sense]} ${what} at ${place} is ${valueText(printing, kind, claimed)}, but its cases add up to ${valueText(printing, kind, total)}`,
        };
      }),
    );
  });
}
