import type { BeamResults, CheckFigures, Results } from '../results/index.ts';
import type { ArchiveRecord, RecordedRatio } from './record.ts';

/** Members, sheets and checks counted, and the check that governs. */
export function totalsOf(results: Results, sheets: number): ArchiveRecord['totals'] {
  const solved = solvedIn(results);
  const checks = solved.flatMap((member) => member.checks);
  return {
    members: results.members.length,
    unsolved: results.members.length - solved.length,
    sheets,
    checks: checks.length,
    failing: checks.filter(({ passes }) => !passes).length,
    governing: governingOf(results),
  };
}

/** The check that comes nearest to its limit or goes farthest beyond it, the first of equals; null where none was judged. */
export function governingOf(results: Results): RecordedRatio | null {
  const ratios = solvedIn(results).flatMap(({ mark, checks }) =>
    checks.map((check) => ({
      member: mark,
      check: wordsOf(check),
      ratio: check.ratio,
      passes: check.passes,
    })),
  );
  return greatest(ratios, ({ ratio }) => ratio);
}

/** The sum of equilibrium that came out farthest from zero as a share of the sizes of its terms; null where nothing was solved. */
export function closureOf(results: Results): ArchiveRecord['closure'] {
  const sums = solvedIn(results).flatMap(({ mark, closure }) =>
    closure.map(({ result, equation, residual, scale }) => ({
      member: mark,
      result,
      equation,
      // Where no term has a size there is nothing that could be left over.
      share: scale.value === 0 ? 0 : Math.abs(residual.value / scale.value),
    })),
  );
  return greatest(sums, ({ share }) => share);
}

function solvedIn({ members }: Results): readonly BeamResults[] {
  return members.filter((member): member is BeamResults => !('error' in member));
}

function wordsOf({ name, combination, span }: CheckFigures): string {
  const where = span === undefined ? '' : `, ${span}`;
  return `${name}, ${combination}${where}`;
}

/** The first of those with the greatest size; null of none. */
function greatest<T>(items: readonly T[], sizeOf: (item: T) => number): T | null {
  let most: T | null = null;
  for (const item of items)
    if (most === null || sizeOf(item) > sizeOf(most)) most = item;
  return most;
}
