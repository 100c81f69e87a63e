import type { BeamWork } from '../beam-work.ts';
import type { MemberContext } from '../case-context.ts';
import { arrangementsHold } from './arrangements-hold.ts';
import type { CheckOutcome } from './check-outcome.ts';
import { rangeAdds } from './range-adds.ts';

/** Every check of the entries without a single state: cases taken apart again, combinations added up again. */
export function runRangeChecks(
  context: MemberContext,
  { solution, combinations, ranges }: BeamWork,
): readonly { readonly mark: string; readonly checks: readonly CheckOutcome[] }[] {
  const cases = solution.results.map((result) => ranges.get(result.mark) ?? result);
  const ofCases = solution.ranges.map((range) => ({
    mark: range.mark,
    checks: arrangementsHold(context, range),
  }));
  const ofCombinations = combinations.flatMap(({ mark, factors }) => {
    const range = ranges.get(mark);
    return range === undefined
      ? []
      : [{ mark, checks: rangeAdds(context, { cases, factors, range }) }];
  });
  return [...ofCases, ...ofCombinations];
}
