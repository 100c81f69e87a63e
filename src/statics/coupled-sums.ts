import type { CandidateSum } from './candidate-sums.ts';
import { rankOf, singularValues } from './linear/singular-values.ts';

/** Sums that have to be solved together, as many as the unknowns that they find. */
export interface CoupledSums {
  readonly sums: readonly CandidateSum[];
  /** Keys of the unknowns. */
  readonly finds: readonly string[];
}

/** Sets of more unknowns than this are not searched one by one: all that are left are taken together. */
const largestSearched = 3;

/**
 * The smallest set of sums that finds as many unknowns, where no sum finds one by itself: two
 * together if that can be, then three, else all that are left. Candidates come in order of
 * preference; `remaining` holds the keys of the unknowns not yet found.
 */
export function coupledSums(
  candidates: readonly CandidateSum[],
  remaining: readonly string[],
): CoupledSums | undefined {
  for (let size = 2; size <= largestSearched; size += 1) {
    for (const finds of subsets(remaining, size)) {
      const sums = independentSums(candidates, remaining, finds);
      if (sums !== undefined) return { sums, finds };
    }
  }
  const sums = independentSums(candidates, remaining, remaining);
  return sums === undefined ? undefined : { sums, finds: remaining };
}

/** As many independent sums as unknowns, among those that hold no other unknown; undefined where there are not enough. */
function independentSums(
  candidates: readonly CandidateSum[],
  remaining: readonly string[],
  finds: readonly string[],
): readonly CandidateSum[] | undefined {
  const others = remaining.filter((key) => !finds.includes(key));
  const chosen: CandidateSum[] = [];
  const rows: number[][] = [];
  for (const candidate of candidates) {
    const factors = new Map(candidate.entries.map(({ key, factor }) => [key, factor]));
    if (others.some((key) => (factors.get(key) ?? 0) !== 0)) continue;
    const row = finds.map((key) => factors.get(key) ?? 0);
    if (rankOf(singularValues([...rows, row]), 1) <= rows.length) continue;
    rows.push(row);
    chosen.push(candidate);
    if (chosen.length === finds.length) return chosen;
  }
  return undefined;
}

/** Every choice of `size` things out of a list, in the order of the list. */
function subsets<T>(list: readonly T[], size: number): readonly (readonly T[])[] {
  if (size === 0) return [[]];
  return list.flatMap((first, index) =>
    subsets(list.slice(index + 1), size - 1).map((rest) => [first, ...rest]),
  );
}
