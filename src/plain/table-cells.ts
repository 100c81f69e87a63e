import type { Block, ColumnAlign, Row } from '../report/index.ts';
import { inlineText } from './inline-text.ts';

/** A table of the report. */
export type TableBlock = Extract<Block, { kind: 'table' }>;

/** A cell as text, with the columns that it spans: `from` included, `to` not. */
export interface TextCell {
  readonly text: string;
  readonly from: number;
  readonly to: number;
  readonly isHead: boolean;
}

/** A row of cells as text. */
export interface TextRow {
  readonly cells: readonly TextCell[];
  readonly isRuled: boolean;
}

/** A table as text, before its columns have widths. */
export interface TextTable {
  readonly columns: readonly ColumnAlign[];
  readonly head: readonly TextRow[];
  readonly body: readonly TextRow[];
}

/** Reads the cells of a table as text. Columns that the table does not name are set left. */
export function readTable({ columns, head, body }: TableBlock): TextTable {
  const heads = head.map(readRow);
  const rows = body.map(readRow);
  const count = Math.max(
    columns.length,
    ...[...heads, ...rows].map(({ cells }) => cells.at(-1)?.to ?? 0),
  );
  const aligns = Array.from({ length: count }, (_, at) => columns[at] ?? 'left');
  return { columns: aligns, head: heads, body: alignPoints(rows, aligns) };
}

function readRow({ cells, isRuled }: Row): TextRow {
  const read: TextCell[] = [];
  for (const { content, colSpan, isHead } of cells) {
    const from = read.at(-1)?.to ?? 0;
    const to = from + Math.max(1, colSpan);
    read.push({ text: inlineText(content).trim(), from, to, isHead });
  }
  return { cells: read, isRuled: isRuled === true };
}

/** Sets blanks after the numbers of decimal columns until their points stand in one line. */
function alignPoints(
  rows: readonly TextRow[],
  columns: readonly ColumnAlign[],
): readonly TextRow[] {
  const decimals = columns.map((align, at) =>
    align === 'decimal'
      ? Math.max(
          0,
          ...rows.flatMap(({ cells }) => cells.filter(isAt(at)).map(afterPoint)),
        )
      : 0,
  );
  return rows.map((row) => ({
    ...row,
    cells: row.cells.map((cell) =>
      columns[cell.from] === 'decimal' &&
      cell.to === cell.from + 1 &&
      isNumber(cell.text)
        ? {
            ...cell,
            text:
              cell.text +
              '\u00a0'.repeat((decimals[cell.from] ?? 0) - afterPoint(cell)),
          }
        : cell,
    ),
  }));
}

function isAt(column: number): (cell: TextCell) => boolean {
  return ({ from, to }) => from === column && to === column + 1;
}

/** What stands from the decimal point on, and any unit after it. */
function afterPoint({ text }: TextCell): number {
  if (!isNumber(text)) return 0;
  const digits = /^[−-]?[\d,\u00a0\u202f]*/u.exec(text)?.[0] ?? '';
  return text.length - digits.length;
}

function isNumber(text: string): boolean {
  return /^[−-]?[\d.]/u.test(text);
}
