import type { CandidateSum } from './candidate-sums.ts';
import type { Sum } from './equilibrium.ts';
import type { Part } from './parts.ts';
import type { Unknown } from './unknowns.ts';

/** A sum that is worked, and what becomes of the unknowns on its part. */
export interface WorkedSum {
  readonly part: Part;
  readonly sum: Sum;
  /** Unknowns on the part that drop out (no arm, no component, or a couple in a force sum), found already or not. */
  readonly clears: readonly Unknown[];
  /** Unknowns in the sum that earlier steps have found. */
  readonly uses: readonly Unknown[];
}

/** A candidate told as a step tells it; `finds` are the keys that the step finds. */
export function worked(
  { part, sum, entries }: CandidateSum,
  known: ReadonlySet<string>,
  finds: readonly string[],
): WorkedSum {
  const pick = (
    test: (entry: CandidateSum['entries'][number]) => boolean,
  ): readonly Unknown[] => entries.filter(test).map(({ unknown }) => unknown);
  return {
    part,
    sum,
    clears: pick(({ factor }) => factor === 0),
    uses: pick(
      ({ factor, key }) => factor !== 0 && known.has(key) && !finds.includes(key),
    ),
  };
}
