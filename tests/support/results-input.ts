import type {
  EntryUse,
  ResultsInput,
  SolvedBeamInput,
} from '../../src/results/index.ts';
import {
  solveBeam,
  superpose,
  superposeRanges,
  type BeamStructure,
} from '../../src/statics/index.ts';

/** Combinations of a test by mark: what each is for, and its factors by case. */
export type Sums = Readonly<
  Record<
    string,
    { readonly for: EntryUse; readonly of: Readonly<Record<string, number>> }
  >
>;

/** A solved beam as results are collected from: its cases, and combinations of them. */
export function solvedBeam(
  mark: string,
  structure: BeamStructure,
  sums: Sums = {},
): SolvedBeamInput {
  const outcome = solveBeam(structure);
  if (outcome.kind !== 'beam') throw new Error(`unsolved: ${outcome.unsolved.reason}`);
  const combined = Object.entries(sums).map(([name, sum]) => {
    const factors = Object.entries(sum.of).map(([of, factor]) => ({
      case: of,
      factor,
    }));
    const range = superposeRanges(outcome, factors, name);
    return {
      result: superpose(outcome.results, factors, name),
      ...(range === undefined ? {} : { range }),
      uses: [sum.for],
    };
  });
  return {
    outcome: 'solved',
    kind: 'beam',
    mark,
    determinacy: outcome.determinacy,
    entries: [
      ...outcome.results.map((result) => {
        const range = outcome.ranges.find(({ mark: of }) => of === result.mark);
        return {
          result,
          ...(range === undefined ? {} : { range }),
          uses: ['case' as const],
        };
      }),
      ...combined,
    ],
  };
}

/** A project of such members. */
export function resultsInput(
  units: 'us' | 'si',
  members: ResultsInput['members'],
  stations?: number,
): ResultsInput {
  return {
    project: { number: '2031-014', title: 'Heron Lane Jetty', revision: 'B', units },
    members,
    ...(stations === undefined ? {} : { stations }),
  };
}
