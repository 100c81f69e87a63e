import type { Combination } from '../../standards/index.ts';
import { keyStations, valueAt, type BeamResult } from '../../statics/index.ts';
import { pointAt, type MemberContext } from '../case-context.ts';
import { lengthText, valueText } from '../printing.ts';
import { agree, type CheckOutcome } from './check-outcome.ts';

/** A combination with its factors, and the results of the cases that it is made of. */
export interface Superposed {
  readonly cases: readonly BeamResult[];
  readonly factors: Combination['factors'];
  readonly result: BeamResult;
}

/** Reactions, and shear and moment at every key station and at the extremes, are the factored sums of those of the cases. */
export function combinationAdds(
  context: MemberContext,
  of: Superposed,
): readonly CheckOutcome[] {
  return [...reactionsAdd(context, of), ...curvesAdd(context, of)];
}

function summed(
  { cases, factors }: Superposed,
  read: (result: BeamResult) => number,
): { total: number; scale: number } {
  const parts = factors.map(({ case: mark, factor }) => {
    const from = cases.find((one) => one.mark === mark);
    return from === undefined ? 0 : factor * read(from);
  });
  return {
    total: parts.reduce((all, part) => all + part, 0),
    scale: parts.reduce((all, part) => all + Math.abs(part), 0),
  };
}

function reactionsAdd(
  { structure, printing }: MemberContext,
  of: Superposed,
): readonly CheckOutcome[] {
  const read = (
    result: BeamResult,
    point: string,
    along: 'x' | 'y' | 'moment',
  ): number => result.reactions.find((one) => one.point === point)?.[along] ?? 0;
  return structure.supports.flatMap(({ point }) =>
    (['x', 'y', 'moment'] as const).map((along) => {
      const claimed = read(of.result, point, along);
      const { total, scale } = summed(of, (result) => read(result, point, along));
      const what = along === 'moment' ? 'moment' : 'force';
      return {
        holds: agree(total, claimed, scale),
        finding: `the reaction at ${point} is ${valueText(printing, what, claimed)}, but its cases add up to ${valueText(printing, what, total)}`,
      };
    }),
  );
}

function curvesAdd(
  { structure, printing }: MemberContext,
  of: Superposed,
): readonly CheckOutcome[] {
  const stations = keyStations(structure, of.result).map(({ x }) => x);
  return (['axial', 'shear', 'moment'] as const).flatMap((what) => {
    const { max, min } = of.result.extremes[what];
    const size = Math.max(Math.abs(max.value), Math.abs(min.value));
    const kind = what === 'moment' ? 'moment' : 'force';
    return [...stations, max.x, min.x].flatMap((x) =>
      (['left', 'right'] as const).map((side): CheckOutcome => {
        const claimed = valueAt(of.result[what], x, side);
        const { total, scale } = summed(of, (result) => valueAt(result[what], x, side));
        const place = pointAt(structure, x) ?? lengthText(printing, x);
        return {
          holds: agree(total, claimed, Math.max(scale, size)),
          finding: `${what} at ${place} is ${valueText(printing, kind, claimed)}, but its cases add up to ${valueText(printing, kind, total)}`,
        };
      }),
    );
  });
}
