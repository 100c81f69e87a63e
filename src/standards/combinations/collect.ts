import type { Combination } from '../combination.ts';
import { mergeCombinations } from './merge-combinations.ts';
import type { CombinationProblem, NamedSetName } from './named-set.ts';

/**
 * More combinations than this are refused: nobody can read them, and cases that exclude one
 * another in many pairs would double them without end.
 */
export const mostCombinations: number = 1000;

/** The entries of a set, merged; or the problem that there are too many of them. */
export function collectCombinations(
  entries: Iterable<Combination>,
  set: NamedSetName,
): {
  readonly combinations: readonly Combination[];
  readonly problems: readonly CombinationProblem[];
} {
  const list: Combination[] = [];
  for (const entry of entries) {
    if (list.length === mostCombinations) {
      const message = `the cases give more than ${mostCombinations} combinations by this set`;
      return {
        combinations: [],
        problems: [{ kind: 'too-many', subject: set, message }],
      };
    }
    list.push(entry);
  }
  return { combinations: mergeCombinations(list), problems: [] };
}
