import { superpose } from '../../statics/index.ts';
import type { BeamWork } from '../beam-work.ts';
import type { StateOfSum } from './chord-statement.ts';

/** The states of sums of a member's cases; none where one of the cases has no single state. */
export function stateOfSum({ solution, ranges }: BeamWork): StateOfSum {
  return (terms, mark) =>
    terms.length === 0 || terms.some((term) => ranges.has(term.case))
      ? undefined
      : superpose(solution.results, terms, mark);
}
