import type { Piece } from '../band.ts';
import type { ElementNode } from '../element-node.ts';
import { elementNode } from '../element-node.ts';
import { breakRagged } from '../break-ragged.ts';
import { setLine } from '../set-line.ts';
import type { Line } from '../set-line.ts';
import { placeLine, textNode } from '../set-lines.ts';
import type { PlacedLine } from '../set-lines.ts';
import type { Setting } from '../setting.ts';
import type { MeasuredCell } from './table-cell.ts';
import type { Grid, GridColumn, MeasuredRow } from './table-grid.ts';

/** A line of a row: the lines of its cells side by side on one baseline. */
export interface RowLine {
  readonly height: number;
  readonly baseline: number;
  readonly pieces: readonly Piece[];
}

/** A row set: its lines below each other, and its element. */
export interface SetRow {
  readonly lines: readonly RowLine[];
  readonly node: ElementNode;
}

/** How a row's cells are tagged: heads of columns, or of a row by its first cell alone. */
export interface RowTags {
  readonly isHead: boolean;
  readonly isHeadedByFirst: boolean;
}

/** Sets a row's cells in their columns; `x` is the table's left edge. */
export function setRow(
  { cells }: MeasuredRow,
  grid: Grid,
  { tags, x }: { readonly tags: RowTags; readonly x: number },
  setting: Setting,
): SetRow {
  const set = cells.map((cell, index) =>
    setCell(cell, { grid, x, own: tagOf(cell, index, tags) }, setting),
  );
  const count = Math.max(0, ...set.map(({ lines }) => lines.length));
  const lines = Array.from({ length: count }, (_, index) =>
    rowLine(set.flatMap((cell) => cell.lines[index] ?? [])),
  );
  const missing = missingCells(cells, grid);
  return {
    lines,
    node: elementNode('TR', [...set.map(({ node }) => node), ...missing]),
  };
}

type CellTag = (lines: readonly Line[]) => ElementNode;

function tagOf(cell: MeasuredCell, index: number, tags: RowTags): CellTag {
  const span = cell.count > 1 ? { colSpan: cell.count } : {};
  const headsRow = cell.cell.isHead || (tags.isHeadedByFirst && index === 0);
  if (tags.isHead)
    return (lines) => textNode('TH', lines, { scope: 'Column', ...span });
  if (headsRow) return (lines) => textNode('TH', lines, { scope: 'Row', ...span });
  return (lines) => textNode('TD', lines, span);
}

/** Every row of a tagged table has as many cells as the table has columns. */
function missingCells(
  cells: readonly MeasuredCell[],
  grid: Grid,
): readonly ElementNode[] {
  const last = cells.at(-1);
  const used = last === undefined ? 0 : last.from + last.count;
  return Array.from({ length: Math.max(0, grid.columns.length - used) }, () =>
    elementNode('TD'),
  );
}

interface CellPlace {
  readonly grid: Grid;
  readonly x: number;
  readonly own: CellTag;
}

function setCell(
  measured: MeasuredCell,
  { grid, x, own }: CellPlace,
  setting: Setting,
): { readonly lines: readonly PlacedLine[]; readonly node: ElementNode } {
  const first = grid.columns[measured.from];
  const last = grid.columns[measured.from + measured.count - 1] ?? first;
  const left = first?.x ?? 0;
  const width = (last?.x ?? 0) + (last?.width ?? 0) - left;
  const fits = measured.natural <= width + 1e-6;
  const lines = fits
    ? measured.unwrapped
    : breakRagged(measured.items, width, setting).map((range) =>
        setLine(range, setting),
      );
  const node = own(lines);
  const placed = lines.map((line) =>
    placeLine(line, measured.base.leading, {
      own: node,
      x: x + left + offsetOf(line, { measured, column: first, width }),
    }),
  );
  return { lines: placed, node };
}

interface LineRoom {
  readonly measured: MeasuredCell;
  readonly column: GridColumn | undefined;
  readonly width: number;
}

/** How far a line is set in within its cell. */
function offsetOf(line: Line, { measured, column, width }: LineRoom): number {
  const free = Math.max(0, width - line.width);
  // A cell over several columns stands over their middle, or at their left where they begin so.
  if (measured.count > 1) return measured.align === 'left' ? 0 : free / 2;
  switch (measured.align) {
    case 'left':
      return 0;
    case 'right':
      return free;
    case 'centre':
      return free / 2;
    case 'decimal':
      if (measured.cell.isHead) return free;
      return measured.point === undefined
        ? free / 2
        : Math.max(0, (column?.point ?? 0) - measured.point);
  }
}

/** Puts the lines of neighbouring cells on one baseline. */
function rowLine(lines: readonly PlacedLine[]): RowLine {
  const baseline = Math.max(0, ...lines.map((line) => line.baseline));
  const below = Math.max(0, ...lines.map((line) => line.height - line.baseline));
  const pieces = lines.flatMap((line) =>
    line.pieces.map((piece) => ({ ...piece, y: piece.y + baseline - line.baseline })),
  );
  return { height: baseline + below, baseline, pieces };
}
