import type { Combination } from '../combination.ts';
import { sameTerms } from './factored-case.ts';

/**
 * Entries with equal terms and one purpose made one: the first mark stays, every clause is kept.
 * A sum that serves strength and service both stays twice, because the two envelopes stand
 * apart; its marks and results are then equal.
 */
export function mergeCombinations(
  list: readonly Combination[],
): readonly Combination[] {
  return list.reduce<readonly Combination[]>((merged, next) => {
    const index = merged.findIndex(
      (entry) => entry.for === next.for && sameTerms(entry.factors, next.factors),
    );
    const twin = merged[index];
    if (twin === undefined) return [...merged, next];
    const clauses = [...new Set([...twin.clauses, ...next.clauses])];
    return merged.with(index, { ...twin, clauses });
  }, []);
}
