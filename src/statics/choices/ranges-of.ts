import type { RangePart, RangeResult, RolledCase, Unsolved } from '../solution.ts';
import type { BeamStructure } from '../structure.ts';
import { choiceRange } from './choice-range.ts';
import {
  optionResults,
  type OptionResults,
  type SolveStates,
} from './option-results.ts';
import { rangeOfState, sumOfRanges } from './sum-of-ranges.ts';

/** The ranges of a beam, or why it has no results. */
export type RangesOutcome =
  | { readonly kind: 'ranges'; readonly ranges: readonly RangeResult[] }
  | { readonly kind: 'unsolved'; readonly unsolved: Unsolved };

/**
 * Greatest and least of every case that has no single state, in the order of the cases. Everything
 * is linear and the choices do not depend on one another, so the greatest is what the fixed loads
 * give and, choice by choice, the greatest of its options; that covers every arrangement, with as
 * many solutions as there are options and not as many as there are arrangements. Trains add what
 * `rollTrains` found for their case.
 *
 * @throws RangeError where the choices are none: see `checkChoices`.
 */
export function rangesOf(
  structure: BeamStructure,
  solve: SolveStates,
  rolled: readonly RolledCase[] = [],
): RangesOutcome {
  const outcome = optionResults(structure, solve);
  if (outcome.kind === 'unsolved') return outcome;
  return {
    kind: 'ranges',
    ranges: outcome.cases.map((one) =>
      sumOfRanges(
        one.mark,
        [rangeOfState(one.fixed), ...partsOf(one, rolled)].map((part) => ({
          factor: 1,
          part,
        })),
      ),
    ),
  };
}

/** Everything of one case that may stand in several ways. */
function partsOf(
  { mark, choices }: OptionResults,
  rolled: readonly RolledCase[],
): readonly RangePart[] {
  const trains = rolled.filter((one) => one.mark === mark);
  return [...choices.map(choiceRange), ...trains.map(({ part }) => part)];
}
