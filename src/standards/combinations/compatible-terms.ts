import type { CombinationContext } from './named-set.ts';
import type { FactoredCase } from './factored-case.ts';

/** Tells whether two cases never act together. */
export type Excludes = (a: string, b: string) => boolean;

/**
 * Which cases exclude one another: any two wind cases (a wind blows one way at a time), and any
 * two of a group of the project's `alternatives`.
 */
export function excludesIn(context: CombinationContext): Excludes {
  const winds = context.cases
    .filter((entry) => entry.kind === 'wind')
    .map((entry) => entry.mark);
  const groups = [winds, ...context.alternatives];
  return (a, b) =>
    a !== b && groups.some((group) => group.includes(a) && group.includes(b));
}

/**
 * Every largest choice of terms that may act together, each in the order of `terms`. With two
 * winds there are two, with none that exclude one another the terms themselves. Choices come
 * one at a time, so that a caller may stop counting.
 *
 * The choices are the maximal cliques of the graph of compatible terms, found with a pivot:
 * Bron and Kerbosch, Algorithm 457, Communications of the ACM 16 (1973), 575; pivot by Tomita,
 * Tanaka and Takahashi, Theoretical Computer Science 363 (2006), 28 (both from memory).
 */
export function* compatibleTerms(
  terms: readonly FactoredCase[],
  excludes: Excludes,
): Generator<readonly FactoredCase[]> {
  const torn = terms.filter((term) =>
    terms.some((other) => excludes(term.case, other.case)),
  );
  const goTogether = (a: FactoredCase, b: FactoredCase): boolean =>
    a !== b && !excludes(a.case, b.case);
  for (const clique of cliques({ chosen: [], open: torn, done: [] }, goTogether)) {
    yield terms.filter((term) => !torn.includes(term) || clique.includes(term));
  }
}

interface Search {
  readonly chosen: readonly FactoredCase[];
  /** Terms that may still join. */
  readonly open: readonly FactoredCase[];
  /** Terms that would fit, but whose choices have been listed already. */
  readonly done: readonly FactoredCase[];
}

function* cliques(
  search: Search,
  goTogether: (a: FactoredCase, b: FactoredCase) => boolean,
): Generator<readonly FactoredCase[]> {
  const { chosen, open, done } = search;
  if (open.length === 0 && done.length === 0) {
    yield chosen;
    return;
  }
  const friends = (of: FactoredCase): number =>
    open.filter((term) => goTogether(of, term)).length;
  const pivot = [...open, ...done].reduce((best, term) =>
    friends(term) > friends(best) ? term : best,
  );
  const branches = open.filter((term) => !goTogether(pivot, term));
  for (const [index, term] of branches.entries()) {
    const listed = branches.slice(0, index);
    const stillOpen = open.filter((other) => !listed.includes(other));
    yield* cliques(
      {
        chosen: [...chosen, term],
        open: stillOpen.filter((other) => goTogether(term, other)),
        done: [...done, ...listed].filter((other) => goTogether(term, other)),
      },
      goTogether,
    );
  }
}
