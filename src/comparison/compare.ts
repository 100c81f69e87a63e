import type { ComparedPackage, Comparison } from './comparison.ts';
import { compareInputs } from './inputs/compare-inputs.ts';
import { findNames } from './inputs/find-names.ts';
import { reachOf, type ComparedSide } from './reach-of.ts';
import { compareResults } from './results/compare-results.ts';

/** What differs between two packages. Both sides' results are to be of one version of the program. */
export function compare(earlier: ComparedSide, later: ComparedSide): Comparison {
  const inputs = compareInputs(earlier.project, later.project);
  const names = findNames(earlier.project, later.project);
  return {
    earlier: packageOf(earlier),
    later: packageOf(later),
    inputs,
    ...compareResults(earlier.results, later.results, names),
    reach: reachOf(earlier, later, inputs, names),
  };
}

/** True where two packages do not differ in anything that a comparison tells. */
export function isAlike({
  inputs,
  outcomes,
  checks,
  results,
  reach,
}: Comparison): boolean {
  return [inputs, outcomes, checks, results, reach].every((list) => list.length === 0);
}

function packageOf({ project: { definition } }: ComparedSide): ComparedPackage {
  return {
    number: definition.number ?? null,
    title: definition.title,
    revision: definition.revisions.at(-1)?.mark ?? null,
  };
}
