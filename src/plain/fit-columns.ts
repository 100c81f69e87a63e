import type { TextCell, TextRow, TextTable } from './table-cells.ts';
import { textWidth } from './text-width.ts';
import { widestWord } from './wrap-text.ts';

/** Blanks between two columns. */
export const columnGap = 2;

/** Columns narrower than this are not worth cutting words for. */
const narrowest = 6;

/** The width of each column of a table, and whether they fit side by side. */
export interface FittedColumns {
  readonly widths: readonly number[];
  readonly isFitting: boolean;
}

/**
 * Widths at which a table fits into so many columns of the terminal: natural ones where there is
 * room; else heads wrap, then the widest columns of words, down to their widest word. Numbers never
 * wrap.
 */
export function fitColumns(table: TextTable, width: number): FittedColumns {
  const rows = [...table.head, ...table.body];
  const natural = widthsBy(table, rows, ({ text }) => naturalWidth(text));
  const wrappedHeads = widthsBy(table, rows, ({ text, isHead }) =>
    isHead ? widestWord(text) : naturalWidth(text),
  );
  const least = widthsBy(table, rows, (cell) => leastWidth(table, cell));
  const withHeads = shrink(natural, wrappedHeads, width);
  return withHeads.isFitting ? withHeads : shrink(withHeads.widths, least, width);
}

/** The same for a table that will not fit: words are cut where they must be. */
export function forceColumns(table: TextTable, width: number): FittedColumns {
  const { widths } = fitColumns(table, width);
  const least = widths.map((one) => Math.min(one, narrowest));
  return shrink(widths, least, width);
}

function shrink(
  natural: readonly number[],
  least: readonly number[],
  width: number,
): FittedColumns {
  const widths = [...natural];
  let over = totalOf(widths) - width;
  while (over > 0) {
    const spare = widths.map((one, at) => (one > (least[at] ?? 0) ? one : -1));
    const widest = spare.indexOf(Math.max(...spare));
    if ((spare[widest] ?? -1) < 0) return { widths, isFitting: false };
    widths[widest] = (widths[widest] ?? 0) - 1;
    over -= 1;
  }
  return { widths, isFitting: true };
}

function totalOf(widths: readonly number[]): number {
  return widths.reduce((sum, one) => sum + one + columnGap, -columnGap);
}

/** Single cells decide; what a cell over several columns lacks is added to its last. */
function widthsBy(
  { columns }: TextTable,
  rows: readonly TextRow[],
  widthOf: (cell: TextCell) => number,
): readonly number[] {
  const widths = columns.map(() => 0);
  const cells = rows.flatMap((row) => row.cells);
  for (const cell of cells.filter(({ from, to }) => to === from + 1))
    widths[cell.from] = Math.max(widths[cell.from] ?? 0, widthOf(cell));
  for (const cell of cells.filter(({ from, to }) => to > from + 1)) {
    const lack = widthOf(cell) - totalOf(widths.slice(cell.from, cell.to));
    if (lack > 0) widths[cell.to - 1] = (widths[cell.to - 1] ?? 0) + lack;
  }
  return widths;
}

function naturalWidth(text: string): number {
  return Math.max(...text.split('\n').map(textWidth));
}

function leastWidth({ columns }: TextTable, cell: TextCell): number {
  const align = columns[cell.from] ?? 'left';
  const wraps =
    cell.isHead || cell.to > cell.from + 1 || align === 'left' || align === 'centre';
  return wraps ? widestWord(cell.text) : naturalWidth(cell.text);
}
