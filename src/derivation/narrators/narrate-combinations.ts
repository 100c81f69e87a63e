import type { EntryResult, Extreme } from '../../statics/index.ts';
import type { MemberContext } from '../case-context.ts';
import { groupEntries, type EntryGroup } from '../entry-groups.ts';
import { cell, decimalsOf, unitName } from '../printing.ts';
import type { CombinationStep, EntryRow } from '../steps.ts';
import { extremeOf, judgedBy, type Entry, type JudgedGroup } from './governing.ts';
import { narrateGoverning } from './narrate-governing.ts';
import { componentEnds, componentsOf, type Component } from './reaction-components.ts';

/** Item 8 for one group: every entry's values in a table, which governs, and that the others do not. */
export function narrateCombinations(
  context: MemberContext,
  cases: readonly Entry[],
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
  const { entries } = group;
  const all = entries.map(judgedBy);
  const columns = componentsOf(context).filter((component) => isFelt(all, component));
  const decimals = columns.map((component) =>
    decimalsOf(
      printing,
      baseOf(component),
      all.flatMap((found) => Object.values(componentEnds(found, component))),
    ),
  );
  const reactions = (found: EntryResult, end: 'max' | 'min'): EntryRow['reactions'] =>
    columns.map((component, i) =>
      cell(
        printing,
        baseOf(component),
        componentEnds(found, component)[end],
        decimals[i] ?? 0,
      ),
    );
  const column = (
    what: 'force' | 'moment',
    read: (entry: Entry) => Extreme,
  ): ((entry: Entry) => EntryRow['shear']) => {
    const values = entries.map((entry) => read(entry).value);
    const count = decimalsOf(printing, what, values);
    return (entry) => cell(printing, what, read(entry).value, count);
  };
  const shear = column('force', (entry) => extremeOf(entry, 'shear'));
  const most = column('moment', (entry) => judgedBy(entry).extremes.moment.max);
  const least = column('moment', (entry) => judgedBy(entry).extremes.moment.min);
  const rows = grouped(context, entries).map(({ first: entry, marks }): EntryRow => ({
    mark: entry.result.mark,
    alike: marks.slice(1),
    clauses: entry.combination?.clauses ?? [],
    reactions: reactions(judgedBy(entry), 'max'),
    ...(entry.range === undefined ? {} : { least: reactions(entry.range, 'min') }),
    shear: shear(entry),
    momentMax: most(entry),
    momentMin: least(entry),
    governs: governing.flatMap((step) =>
      step.kind === 'governing' && step.entry === entry.result.mark ? [step.what] : [],
    ),
  }));
  return {
    kind: 'entries',
    for: group.for,
    columns: columns.map(({ symbol }) => symbol),
    units: { force: unitName(printing, 'force'), moment: unitName(printing, 'moment') },
    rows,
    hasRanges: entries.some(({ range }) => range !== undefined),
  };
}

/** Entries that come to the same on this member, together; what may stand in several ways is felt too. */
function grouped(
  { arranged }: MemberContext,
  entries: readonly Entry[],
): readonly EntryGroup<Entry>[] {
  return groupEntries(arranged, entries, ({ result: { mark }, combination }) => ({
    mark,
    ...(combination === undefined ? {} : { factors: combination.factors }),
  }));
}

/** A column that no entry feels, all of it 0, is left out; the steps above have said that it is 0. */
function isFelt(all: readonly EntryResult[], component: Component): boolean {
  if (component.kind === 'y') return true;
  return all.some((found) => {
    const { max, min } = componentEnds(found, component);
    return max !== 0 || min !== 0;
  });
}

function baseOf({ kind }: Component): 'force' | 'moment' {
  return kind === 'moment' ? 'moment' : 'force';
}
