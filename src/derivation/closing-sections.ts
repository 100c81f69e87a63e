import type { BeamWork } from './beam-work.ts';
import type { MemberContext } from './case-context.ts';
import type { Section } from './derivation.ts';
import { judgedBy, type Entry, type JudgedGroup } from './narrators/governing.ts';
import { narrateCombinations } from './narrators/narrate-combinations.ts';
import { narrateResults } from './narrators/narrate-results.ts';
import { envelopeFigure } from './pictures/diagram-figures.ts';
import type { Step } from './steps.ts';

/** The entries that the member is judged on: combinations where there are any, else cases. */
export function judgedOf({
  combinations,
  combined,
  solution,
  ranges,
}: BeamWork): readonly Entry[] {
  if (combined.length === 0)
    return solution.results.map((result) => withRange(ranges, { result }));
  return combined.flatMap((result, index) => {
    const combination = combinations[index];
    return combination === undefined
      ? []
      : [withRange(ranges, { result, combination })];
  });
}

/** An entry with its bounds, where it has no single state. */
function withRange(ranges: BeamWork['ranges'], entry: Entry): Entry {
  const range = ranges.get(entry.result.mark);
  return range === undefined ? entry : { ...entry, range };
}

/** Entries in groups that are never mixed: strength, service, or the cases where nothing is combined. */
export function judgedGroups(work: BeamWork): readonly JudgedGroup[] {
  const judged = judgedOf(work);
  if (work.combined.length === 0) return [{ for: 'cases', entries: judged }];
  return (['strength', 'service'] as const)
    .map((scope) => ({
      for: scope,
      entries: judged.filter(({ combination }) => combination?.for === scope),
    }))
    .filter(({ entries }) => entries.length > 0);
}

/** Items 8 to 10 of a sheet: cases and combinations compared group by group, the limits as narrated, and the results box. */
export function closingSections(
  work: BeamWork,
  context: MemberContext,
  limits: readonly Step[],
): readonly Section[] {
  const cases = work.solution.results.map((result) =>
    withRange(work.ranges, { result }),
  );
  const groups = judgedGroups(work);
  const isCombined = work.combined.length > 0;
  const table = narrateCombinations(context, cases, {
    for: 'cases',
    entries: cases,
  });
  const steps: readonly Step[] = [
    ...(isCombined && cases.length > 1
      ? table.filter(({ kind }) => kind === 'entries')
      : []),
    ...groups.flatMap((group): readonly Step[] => [
      ...(isCombined || cases.length > 1
        ? narrateCombinations(context, cases, group)
        : []),
      ...envelope(context, group),
    ]),
  ];
  return [
    ...(steps.length === 0 ? [] : [{ kind: 'combinations' as const, steps }]),
    ...(limits.length === 0 ? [] : [{ kind: 'limits' as const, steps: limits }]),
    { kind: 'results', steps: [narrateResults(context, groups, work.handedOn)] },
  ];
}

function envelope(
  context: MemberContext,
  { for: scope, entries }: JudgedGroup,
): readonly Step[] {
  // The envelope of a single case without a single state stands where its arrangements are worked.
  const isOne = scope === 'cases' || entries.every(({ range }) => range === undefined);
  if (entries.length === 0 || (entries.length === 1 && isOne)) return [];
  const figure = envelopeFigure(context, entries.map(judgedBy));
  return [{ kind: 'figure', shows: 'envelope', for: scope, figure }];
}
