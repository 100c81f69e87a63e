import type { RangeResult } from '../solution.ts';
import { choiceRange } from './choice-range.ts';
import type { OptionResults } from './option-results.ts';
import { rangeOfState, sumOfRanges } from './sum-of-ranges.ts';

/** Greatest and least of a case from what always stands and its choices alone, without any train that it has. */
export function rangeOfOptions({ mark, fixed, choices }: OptionResults): RangeResult {
  const parts = [rangeOfState(fixed), ...choices.map(choiceRange)];
  return sumOfRanges(
    mark,
    parts.map((part) => ({ factor: 1, part })),
  );
}
