import type { CheckChange, OutcomeChange, ResultChange } from '../comparison.ts';
import type { BeamResults, MemberResults, Results } from '../../results/index.ts';
import { laterNames, type Names } from '../inputs/names.ts';
import { compareChecks, failingFirst } from './compare-checks.ts';
import { compareValues } from './compare-values.ts';

/** What changed between the results of two projects. */
export interface ResultsComparison {
  readonly outcomes: readonly OutcomeChange[];
  /** Newly failing first, then by member in sheet order. */
  readonly checks: readonly CheckChange[];
  readonly results: readonly ResultChange[];
}

/**
 * What changed between two results, member by member in the later sheet order. `names` read the
 * earlier side's marks and points in the later's; without them all names are taken as they are.
 */
export function compareResults(
  earlier: Results,
  later: Results,
  names: Names = laterNames,
): ResultsComparison {
  const before = new Map(
    earlier.members.map((member) => [names.member(member.mark), member]),
  );
  const pairs = later.members.map((after) => ({
    after,
    before: before.get(after.mark),
  }));
  const marks = new Set(later.members.map(({ mark }) => mark));
  const gone = earlier.members.filter(({ mark }) => !marks.has(names.member(mark)));
  return {
    outcomes: [
      ...gone.map(({ mark }): OutcomeChange => ({ kind: 'removed', member: mark })),
      ...pairs.flatMap((pair) => outcomeOf(pair.before, pair.after)),
    ],
    checks: failingFirst(
      pairs.flatMap((pair) =>
        isSolved(pair.after)
          ? compareChecks(solvedOrNone(pair.before), pair.after, names)
          : [],
      ),
    ),
    results: pairs.flatMap((pair) => {
      const was = solvedOrNone(pair.before);
      if (was === undefined || !isSolved(pair.after)) return [];
      return compareValues(was, pair.after, (name) => names.point(was.mark, name));
    }),
  };
}

function outcomeOf(
  before: MemberResults | undefined,
  after: MemberResults,
): readonly OutcomeChange[] {
  const member = after.mark;
  const why = isSolved(after) ? {} : { why: after.error.message };
  if (before === undefined) return [{ kind: 'added', member, ...why }];
  if (isSolved(before) === isSolved(after)) return [];
  return [
    { kind: isSolved(after) ? 'solved again' : 'no longer solved', member, ...why },
  ];
}

function isSolved(member: MemberResults): member is BeamResults {
  return 'results' in member;
}

function solvedOrNone(member: MemberResults | undefined): BeamResults | undefined {
  return member !== undefined && isSolved(member) ? member : undefined;
}
