import { exactly, figure, name, type Expression } from '../equation/index.ts';
import {
  componentEnds,
  componentsOf,
  groupEntries,
  type BeamWork,
  type EntryGroup,
  type EntryName,
} from '../derivation/index.ts';
import type { EntryResult } from '../statics/index.ts';
import { displayUnit, formatNumber, quantity, unitText } from '../units/index.ts';
import type { ReactionRow, ReactionTable } from './report-input.ts';

type End = 'max' | 'min';

/**
 * The reactions of a member in concurrent sets, case by case and combination by combination, in the project's units;
 * of entries without a single state the greatest and the least of each, which are no concurrent sets.
 */
export function reactionTable(
  work: BeamWork,
  printing: { readonly system: 'us' | 'si'; readonly figures: number },
): ReactionTable {
  const { definition, structure, solution, combined, ranges } = work;
  const boundsOf = (result: EntryResult): EntryResult =>
    ranges.get(result.mark) ?? result;
  const all = [...solution.results, ...combined].map(boundsOf);
  const every = componentsOf({ structure });
  const components = every.filter((component) => isFelt(all, component));
  const unitOf = (kind: string): ReturnType<typeof displayUnit> =>
    displayUnit(printing.system, kind === 'moment' ? 'moment' : 'force');
  const read = (found: EntryResult, index: number, end: End): number => {
    const component = components[index];
    if (component === undefined) return 0;
    return componentEnds(found, component)[end] / unitOf(component.kind).inSi;
  };
  const decimals = components.map((_, index) => {
    const ends = (['max', 'min'] as const).flatMap((end) =>
      all.map((found) => read(found, index, end)),
    );
    return decimalsFor(ends, printing.figures);
  });
  const text = (count: number, index: number): string =>
    formatNumber(count, { kind: 'decimals', count: decimals[index] ?? 0 }).text;
  const judged = (combined.length > 0 ? combined : solution.results).map(boundsOf);
  const cells = (found: EntryResult, end: End): ReactionRow['values'] =>
    components.map((_, index) => cellOf(read(found, index, end), decimals[index] ?? 0));
  return {
    mark: definition.mark,
    columns: components.map(({ symbol, kind }) => ({
      symbol: name(symbol),
      unit: unitText(unitOf(kind)),
    })),
    zeros: every
      .filter((component) => !components.includes(component))
      .map(({ symbol }) => name(symbol)),
    rows: rowGroups(work).map(({ first: { found, factors }, marks }) => ({
      entries: marks,
      isCombination: factors !== undefined,
      values: cells(boundsOf(found), 'max'),
      ...(ranges.has(found.mark) ? { least: cells(boundsOf(found), 'min') } : {}),
    })),
    hasRanges: all.some(({ mark }) => ranges.has(mark)),
    envelope: components.map(({ symbol }, index) => {
      const of = (end: End): Ranked =>
        furthest(
          judged.map((found) => ({ mark: found.mark, count: read(found, index, end) })),
          end === 'max' ? 1 : -1,
        );
      const [max, min] = [of('max'), of('min')];
      const ends = { max: text(max.count, index), min: text(min.count, index) };
      return { symbol: name(symbol), ...ends, maxEntry: max.mark, minEntry: min.mark };
    }),
  };
}

/** Decimals of a column that give its largest value the project's figures. */
function decimalsFor(column: readonly number[], figures: number): number {
  const largest = Math.max(0, ...column.map(Math.abs));
  if (largest === 0) return 0;
  return Math.max(0, figures - 1 - Math.floor(Math.log10(largest)));
}

/** A vertical reaction has its column in any case; another where any entry gives it. */
function isFelt(
  all: readonly EntryResult[],
  component: ReturnType<typeof componentsOf>[number],
): boolean {
  if (component.kind === 'y') return true;
  return all.some((found) => {
    const { max, min } = componentEnds(found, component);
    return max !== 0 || min !== 0;
  });
}

interface RowEntry extends EntryName {
  readonly found: EntryResult;
}

/** Cases, then combinations, those together that come to the same on this member, whatever arrangements its loads have. */
function rowGroups({
  arranged,
  solution,
  combined,
  combinations,
}: BeamWork): readonly EntryGroup<RowEntry>[] {
  const cases = solution.results.map((found) => ({ mark: found.mark, found }));
  const sums = combined.map((found, index) => ({
    mark: found.mark,
    found,
    factors: combinations[index]?.factors ?? [],
  }));
  return groupEntries<RowEntry>(arranged, [...cases, ...sums], (entry) => entry);
}

interface Ranked {
  readonly mark: string;
  readonly count: number;
}

/** The greatest (sense 1) or the least (−1) of a column; the first of those that are equal. */
function furthest(ranked: readonly Ranked[], sense: 1 | -1): Ranked {
  return ranked.reduce(
    (a, b) => (sense * (b.count - a.count) > 0 ? b : a),
    ranked[0] ?? { mark: '', count: 0 },
  );
}

function cellOf(count: number, decimals: number): Expression {
  const pure = displayUnit('si', 'pure');
  if (count === 0) return exactly(0, pure);
  return figure(quantity(count, pure), pure, { kind: 'decimals', count: decimals });
}
