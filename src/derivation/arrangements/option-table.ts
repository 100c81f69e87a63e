import type { Figure } from '../../equation/index.ts';
import type { MemberContext } from '../case-context.ts';
import { cell, decimalsOf, unitName } from '../printing.ts';
import type { OptionRow, RangeStep } from '../steps/range-steps.ts';

import { partsOf, type TakenApart } from './option-values.ts';
import { displayOf, type Quantity } from './quantities.ts';

/** How many quantities stand in one table. */
const mostColumns = 6;

/** Tables of what each choice gives alone, down each column its greatest and least sum, so many columns each. */
export function optionTables(
  context: MemberContext,
  apart: TakenApart,
  quantities: readonly Quantity[],
): readonly RangeStep[] {
  const tables: RangeStep[] = [];
  for (let start = 0; start < quantities.length; start += mostColumns)
    tables.push(
      optionTable(context, apart, quantities.slice(start, start + mostColumns)),
    );
  return tables;
}

function optionTable(
  context: MemberContext,
  apart: TakenApart,
  columns: readonly Quantity[],
): RangeStep {
  const { fixed, choices } = apart;
  const decimals = columns.map((column) => columnDecimals(context, apart, column));
  const cells = (read: (column: Quantity) => number): readonly Figure[] =>
    columns.map((column, index) =>
      cell(context.printing, displayOf(column), read(column), decimals[index] ?? 0),
    );
  const always = cells(({ read }) => read(fixed));
  const rows = choices.flatMap(({ name, text, options }) =>
    options.flatMap(({ number, name: option, result }): readonly OptionRow[] =>
      number === undefined
        ? []
        : [
            {
              number,
              text,
              ...(name.kind === 'carried' ? { option } : {}),
              cells: cells(({ read }) => read(result)),
            },
          ],
    ),
  );
  const hasFixed = columns.some(({ read }) => read(fixed) !== 0);
  return {
    kind: 'options',
    of: columns[0]?.group ?? 'moments',
    columns: columns.map(({ head }) => head),
    units: columns.map((column) => unitName(context.printing, displayOf(column))),
    rows: [...(hasFixed ? [{ text: '', cells: always }] : []), ...rows],
    greatest: cells(({ ends }) => ends.max),
    least: cells(({ ends }) => ends.min),
  };
}

/** Decimals of a column: what its greatest entry needs. */
export function columnDecimals(
  { printing }: MemberContext,
  apart: TakenApart,
  column: Quantity,
): number {
  const parts = (['max', 'min'] as const).flatMap((sense) =>
    partsOf(apart, column, sense).map(({ si }) => si),
  );
  const all = [...parts, column.ends.max, column.ends.min];
  return decimalsOf(printing, displayOf(column), all);
}
