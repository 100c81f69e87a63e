import { exactly, figure, name, type Expression } from '../equation/index.ts';
import { componentsOf, type BeamWork } from '../derivation/index.ts';
import type { BeamResult } from '../statics/index.ts';
import { displayUnit, formatNumber, quantity, unitText } from '../units/index.ts';
import type { ReactionTable } from './report-input.ts';

/** The reactions of a member in concurrent sets, case by case and combination by combination, in the project's units. */
export function reactionTable(
  work: BeamWork,
  printing: { readonly system: 'us' | 'si'; readonly figures: number },
): ReactionTable {
  const { definition, structure, solution, combined } = work;
  const components = componentsOf({ structure });
  const unitOf = (kind: string): ReturnType<typeof displayUnit> =>
    displayUnit(printing.system, kind === 'moment' ? 'moment' : 'force');
  const read = (result: BeamResult, index: number): number => {
    const component = components[index];
    if (component === undefined) return 0;
    const si =
      result.reactions.find(({ point }) => point === component.point)?.[
        component.kind
      ] ?? 0;
    return si / unitOf(component.kind).inSi;
  };
  const all = [...solution.results, ...combined];
  const decimals = components.map((_, index) => {
    const largest = Math.max(0, ...all.map((result) => Math.abs(read(result, index))));
    return largest === 0
      ? 0
      : Math.max(0, printing.figures - 1 - Math.floor(Math.log10(largest)));
  });
  const text = (count: number, index: number): string =>
    formatNumber(count, { kind: 'decimals', count: decimals[index] ?? 0 }).text;
  const judged = combined.length > 0 ? combined : solution.results;
  return {
    mark: definition.mark,
    columns: components.map(({ symbol, kind }) => ({
      symbol: name(symbol),
      unit: unitText(unitOf(kind)),
    })),
    rows: all.map((result, row) => ({
      entry: result.mark,
      isCombination: row >= solution.results.length,
      values: components.map((_, index) =>
        cellOf(read(result, index), decimals[index] ?? 0),
      ),
    })),
    envelope: components.map(({ symbol }, index) => {
      const ranked = judged.map((result) => ({
        mark: result.mark,
        count: read(result, index),
      }));
      const max = furthest(ranked, 1);
      const min = furthest(ranked, -1);
      return {
        symbol: name(symbol),
        max: text(max.count, index),
        maxEntry: max.mark,
        min: text(min.count, index),
        minEntry: min.mark,
      };
    }),
  };
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
