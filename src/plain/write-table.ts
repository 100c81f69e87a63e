import type { ColumnAlign } from '../report/index.ts';
import { columnGap, fitColumns, forceColumns } from './fit-columns.ts';
import {
  readTable,
  type TableBlock,
  type TextCell,
  type TextRow,
  type TextTable,
} from './table-cells.ts';
import { padAfter, padAround, padBefore } from './text-width.ts';
import { wrapText } from './wrap-text.ts';

/**
 * A table as lines of text, its columns aligned and its numbers on their decimal points. A table
 * that is too wide is written in several, each beginning with the first column again.
 */
export function writeTable(block: TableBlock, width: number): readonly string[] {
  const table = readTable(block);
  if (table.columns.length === 0) return [];
  const isRuled = block.style === 'ruled';
  return inPieces(table, width).flatMap((piece, index) => [
    ...(index === 0 ? [] : ['']),
    ...writePiece(piece, { width, isRuled }),
  ]);
}

/** The table in pieces that fit, each with the first column and as many others as there is room for. */
function inPieces(table: TextTable, width: number): readonly TextTable[] {
  const pieces: TextTable[] = [];
  let next = 0;
  while (next < table.columns.length) {
    const stub = next === 0 ? [] : [0];
    let end = next + 1;
    const upTo = (to: number): TextTable =>
      pickColumns(table, [...stub, ...range(next, to)]);
    while (end < table.columns.length && fitColumns(upTo(end + 1), width).isFitting)
      end += 1;
    // A first column alone says nothing; it takes one more along, however narrow that becomes.
    if (next === 0 && end === 1 && table.columns.length > 1) end = 2;
    pieces.push(upTo(end));
    next = end;
  }
  return pieces;
}

function range(from: number, to: number): readonly number[] {
  return Array.from({ length: to - from }, (_, at) => from + at);
}

function pickColumns(table: TextTable, picked: readonly number[]): TextTable {
  const pickRow = (row: TextRow): TextRow => ({
    ...row,
    cells: row.cells.flatMap((cell) => pickCell(cell, picked)),
  });
  return {
    columns: picked.map((at) => table.columns[at] ?? 'left'),
    head: table.head.map(pickRow),
    body: table.body.map(pickRow),
  };
}

function pickCell(cell: TextCell, picked: readonly number[]): readonly TextCell[] {
  const at = picked.flatMap((column, index) =>
    column >= cell.from && column < cell.to ? [index] : [],
  );
  const [from] = at;
  return from === undefined ? [] : [{ ...cell, from, to: from + at.length }];
}

function writePiece(
  table: TextTable,
  { width, isRuled }: { readonly width: number; readonly isRuled: boolean },
): readonly string[] {
  const fitted = fitColumns(table, width);
  const { widths } = fitted.isFitting ? fitted : forceColumns(table, width);
  const rule = '─'.repeat(Math.max(0, spanWidth(widths, 0, widths.length)));
  const write = (row: TextRow): readonly string[] => [
    ...(row.isRuled ? [rule] : []),
    ...writeRow(row, table.columns, widths),
  ];
  const head = table.head.flatMap(write);
  const body = table.body.flatMap(write);
  return [
    ...head,
    ...(isRuled && head.length > 0 ? [rule] : []),
    ...body,
    ...(isRuled ? [rule] : []),
  ];
}

function spanWidth(widths: readonly number[], from: number, to: number): number {
  return widths.slice(from, to).reduce((sum, one) => sum + one + columnGap, -columnGap);
}

function writeRow(
  { cells }: TextRow,
  columns: readonly ColumnAlign[],
  widths: readonly number[],
): readonly string[] {
  const set = cells.map((cell) => {
    const room = spanWidth(widths, cell.from, cell.to);
    const align = columns[cell.from] ?? 'left';
    return wrapText(cell.text, room).map((line) => alignedIn(line, align, room));
  });
  const height = Math.max(1, ...set.map((lines) => lines.length));
  return Array.from({ length: height }, (_, at) =>
    cells
      .map(
        (cell, index) =>
          set[index]?.[at] ?? ' '.repeat(spanWidth(widths, cell.from, cell.to)),
      )
      .join(' '.repeat(columnGap))
      .trimEnd(),
  );
}

function alignedIn(line: string, align: ColumnAlign, width: number): string {
  switch (align) {
    case 'left':
      return padAfter(line, width);
    case 'centre':
      return padAround(line, width);
    case 'right':
    case 'decimal':
      return padBefore(line, width);
  }
}
