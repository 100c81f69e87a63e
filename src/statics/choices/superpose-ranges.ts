import type { CaseFactor } from '../loading.ts';
import type { BeamSolution, RangeResult } from '../solution.ts';
import { rangeOfState, sumOfRanges, type RangeTerm } from './sum-of-ranges.ts';

/**
 * The sum of factored cases of which some have no single state, under a new mark; undefined where
 * all have one, and `superpose` says all there is to say. A negative factor takes the least for
 * the greatest. A case named twice counts with both factors together, since it is one and the same load.
 *
 * @throws RangeError where a factor's case is not among the results.
 */
export function superposeRanges(
  { results, ranges }: Pick<BeamSolution, 'results' | 'ranges'>,
  factors: readonly CaseFactor[],
  mark: string,
): RangeResult | undefined {
  const merged = new Map<string, number>();
  for (const { case: name, factor } of factors)
    merged.set(name, (merged.get(name) ?? 0) + factor);
  if (!ranges.some((range) => merged.has(range.mark))) return undefined;
  const terms = [...merged].map(([name, factor]): RangeTerm => {
    const range = ranges.find((one) => one.mark === name);
    if (range !== undefined) return { factor, part: range };
    const result = results.find((one) => one.mark === name);
    if (result === undefined) throw new RangeError(`no result ${name} to superpose`);
    return { factor, part: rangeOfState(result) };
  });
  return sumOfRanges(mark, terms);
}
