import type { Block, Row } from '../../report/index.ts';
import type { Setting } from '../setting.ts';
import type { TextBase } from '../text-look.ts';
import { columnWidths, spreadOut, widenForSpan } from './column-widths.ts';
import type { ColumnWish } from './column-widths.ts';
import { measureCell } from './table-cell.ts';
import type { MeasuredCell } from './table-cell.ts';

/** A table's block. */
export type TableBlock = Extract<Block, { kind: 'table' }>;

/** A row measured. */
export interface MeasuredRow {
  readonly row: Row;
  readonly cells: readonly MeasuredCell[];
}

/** Where a column stands. */
export interface GridColumn {
  readonly x: number;
  readonly width: number;
  /** In a decimal column: where its points stand, from its left. */
  readonly point: number;
}

/** A table measured: its rows, and its columns at their final places. */
export interface Grid {
  readonly columns: readonly GridColumn[];
  readonly head: readonly MeasuredRow[];
  readonly body: readonly MeasuredRow[];
  /** From the left edge of the first column to the right edge of the last. */
  readonly width: number;
}

/** The looks of a table's text and the space between its columns. */
export interface GridLook {
  readonly head: TextBase;
  readonly body: TextBase;
  readonly gap: number;
}

/** Measures a table's cells and gives its columns their places within a width. */
export function measureGrid(
  table: TableBlock,
  width: number,
  look: GridLook,
  setting: Setting,
): Grid {
  const { columns: aligns } = table;
  const measure = (rows: readonly Row[], base: TextBase): readonly MeasuredRow[] =>
    rows.map((row) => ({ row, cells: measureRow(row, { aligns, base }, setting) }));
  const head = measure(table.head, look.head);
  const body = measure(table.body, look.body);
  const cells = [...head, ...body].flatMap((row) => row.cells);
  const count = cells.reduce(
    (most, { from, count: spanned }) => Math.max(most, from + spanned),
    aligns.length,
  );
  const points = Array.from({ length: count }, (_, index) => pointOf(cells, index));
  const wishes = wishesOf(cells, { points, gap: look.gap });
  const room = width - (count - 1) * look.gap;
  const natural = columnWidths(wishes, room);
  const widths = table.isWide === true ? spreadOut(natural, room) : natural;
  let x = 0;
  const columns = widths.map((own, index): GridColumn => {
    const { before, after } = points[index] ?? { before: 0, after: 0 };
    // Numbers stand at the right edge of their column, under the end of its head.
    const column = { x, width: own, point: Math.max(before, own - after) };
    x += own + look.gap;
    return column;
  });
  return { columns, head, body, width: Math.max(0, x - look.gap) };
}

function measureRow(
  row: Row,
  { aligns, base }: { readonly aligns: TableBlock['columns']; readonly base: TextBase },
  setting: Setting,
): readonly MeasuredCell[] {
  let from = 0;
  return row.cells.map((cell) => {
    const count = Math.max(1, cell.colSpan);
    const align = aligns[from] ?? 'left';
    const measured = measureCell(cell, { from, count, base, align }, setting);
    from += count;
    return measured;
  });
}

/** The most that stands before and after the points of a column. */
interface PointRoom {
  readonly before: number;
  readonly after: number;
}

function pointOf(cells: readonly MeasuredCell[], column: number): PointRoom {
  let before = 0;
  let after = 0;
  for (const { from, point, natural } of cells) {
    if (from !== column || point === undefined) continue;
    before = Math.max(before, point);
    after = Math.max(after, natural - point);
  }
  return { before, after };
}

function wishesOf(
  cells: readonly MeasuredCell[],
  { points, gap }: { readonly points: readonly PointRoom[]; readonly gap: number },
): readonly ColumnWish[] {
  const single = points.map(({ before, after }, column): ColumnWish => {
    const own = cells.filter(({ from, count }) => from === column && count === 1);
    const widest = (of: 'natural' | 'least'): number =>
      own.reduce((width, cell) => Math.max(width, cell[of]), before + after);
    return { natural: widest('natural'), least: widest('least') };
  });
  return cells
    .filter(({ count }) => count > 1)
    .reduce<readonly ColumnWish[]>((wishes, { from, count, natural, least }) => {
      const gaps = (count - 1) * gap;
      return widenForSpan(wishes, {
        from,
        count,
        natural: natural - gaps,
        least: least - gaps,
      });
    }, single);
}
