import type { BeamResult } from '../../statics/index.ts';
import type { MemberContext } from '../case-context.ts';
import { cell, decimalsOf, unitName } from '../printing.ts';
import type { CombinationStep, EntryRow } from '../steps.ts';
import { extremeOf, type JudgedGroup } from './governing.ts';
import { narrateGoverning } from './narrate-governing.ts';
import { componentsOf, componentValue } from './reaction-components.ts';

/** Item 8 for one group: every entry's values in a table, which governs, and that the others do not. */
export function narrateCombinations(
  context: MemberContext,
  cases: readonly BeamResult[],
  group: JudgedGroup,
): readonly CombinationStep[] {
  if (group.entries.length === 0) return [];
  const governing = (['moment-max', 'moment-min', 'shear'] as const).flatMap((what) =>
    narrateGoverning(context, cases, group, what),
  );
  return [tableOf(context, group, governing), ...governing];
}

function tableOf(
  context: MemberContext,
  group: JudgedGroup,
  governing: readonly CombinationStep[],
): CombinationStep {
  const { printing } = context;
  // A column that no entry feels, all of it 0, is left out; the steps above have said that it is 0.
  const columns = componentsOf(context).filter(
    (component) =>
      component.kind === 'y' ||
      group.entries.some(({ result }) => componentValue(result, component) !== 0),
  );
  const columnValues = columns.map((column) =>
    group.entries.map(({ result }) => componentValue(result, column)),
  );
  const decimals = columnValues.map((values, i) =>
    decimalsOf(printing, columns[i]?.kind === 'moment' ? 'moment' : 'force', values),
  );
  const greatest = (result: BeamResult): number => extremeOf(result, 'shear').value;
  const of = (read: (result: BeamResult) => number, what: 'force' | 'moment'): number =>
    decimalsOf(
      printing,
      what,
      group.entries.map(({ result }) => read(result)),
    );
  const shearDecimals = of(greatest, 'force');
  const maxDecimals = of((result) => result.extremes.moment.max.value, 'moment');
  const minDecimals = of((result) => result.extremes.moment.min.value, 'moment');
  const rows = group.entries.map(({ result, combination }): EntryRow => ({
    mark: result.mark,
    clauses: combination?.clauses ?? [],
    reactions: columns.map((column, i) =>
      cell(
        printing,
        column.kind === 'moment' ? 'moment' : 'force',
        componentValue(result, column),
        decimals[i] ?? 0,
      ),
    ),
    shear: cell(printing, 'force', greatest(result), shearDecimals),
    momentMax: cell(printing, 'moment', result.extremes.moment.max.value, maxDecimals),
    momentMin: cell(printing, 'moment', result.extremes.moment.min.value, minDecimals),
    governs: governing.flatMap((step) =>
      step.kind === 'governing' && step.entry === result.mark ? [step.what] : [],
    ),
  }));
  return {
    kind: 'entries',
    for: group.for,
    columns: columns.map(({ symbol }) => symbol),
    units: { force: unitName(printing, 'force'), moment: unitName(printing, 'moment') },
    rows,
  };
}
