import {
  divide,
  entryAt,
  multiply,
  subtract,
  type DoubleDouble,
} from './double-double.ts';

/** A row of a banded matrix: its entries from column `first` on, all others nothing. */
export interface BandRow {
  readonly first: number;
  readonly entries: readonly DoubleDouble[];
}

/** A banded matrix taken apart by elimination, with the steps to take on a right-hand side. */
export interface BandedLu {
  /** U by rows; the first entry of row i is the pivot in column i. */
  readonly upper: readonly BandRow[];
  /** Step by step: which row came up from below, and what of it was taken from those under it. */
  readonly steps: readonly {
    readonly pivotRow: number;
    readonly factors: readonly {
      readonly row: number;
      readonly factor: DoubleDouble;
    }[];
  }[];
  /** Power of two by which each row was multiplied, which makes rows of unlike units comparable. */
  readonly scales: readonly number[];
}

/**
 * Eliminates with partial pivoting among the rows that reach the column, which near the diagonal
 * are few, so that the work grows with the number of rows only.
 * — Golub & Van Loan, Matrix Computations, 4th ed., section 4.3.3 (from memory).
 *
 * @throws RangeError where a column has no pivot.
 */
export function factorBandedLu(matrix: readonly BandRow[]): BandedLu {
  const scales = matrix.map(({ entries }) => scaleOf(entries));
  const rows = matrix.map((row, i) => scaled(row, scales[i] ?? 1));
  const lasts = lastReaching(matrix);
  const steps = rows.map((_, column) => {
    const end = lasts[column] ?? column;
    const pivotRow = bestPivot(rows, column, end);
    const pivot = rows[pivotRow] ?? { first: 0, entries: [] };
    rows[pivotRow] = rows[column] ?? pivot;
    const head = entryOf(pivot, column);
    if (head[0] === 0)
      throw new RangeError(`cannot factor: no pivot in column ${column}`);
    const upper = { first: column, entries: pivot.entries.slice(column - pivot.first) };
    rows[column] = upper;
    const factors: { row: number; factor: DoubleDouble }[] = [];
    for (let row = column + 1; row <= end; row += 1) {
      const below = rows[row];
      if (below === undefined || entryOf(below, column)[0] === 0) continue;
      const factor = divide(entryOf(below, column), head);
      rows[row] = eliminated(below, upper, factor);
      factors.push({ row, factor });
    }
    return { pivotRow, factors };
  });
  return { upper: rows, steps, scales };
}

/** For each column the last row that reaches it at the outset; exchanges bring none from further down. */
function lastReaching(matrix: readonly BandRow[]): readonly number[] {
  const lasts = matrix.map((_, column) => column);
  for (const [row, { first }] of matrix.entries())
    for (let column = first; column < row; column += 1)
      lasts[column] = Math.max(lasts[column] ?? 0, row);
  // A row that came up leaves another in its place, which may reach as far left as the column did.
  for (let column = 1; column < lasts.length; column += 1)
    lasts[column] = Math.max(lasts[column] ?? 0, lasts[column - 1] ?? 0);
  return lasts;
}

function scaleOf(entries: readonly DoubleDouble[]): number {
  const greatest = Math.max(0, ...entries.map(([high]) => Math.abs(high)));
  return greatest === 0 ? 1 : 2 ** -Math.floor(Math.log2(greatest));
}

function scaled({ first, entries }: BandRow, scale: number): BandRow {
  return { first, entries: entries.map(([high, low]) => [high * scale, low * scale]) };
}

function entryOf({ first, entries }: BandRow, column: number): DoubleDouble {
  return entryAt(entries, column - first);
}

function bestPivot(rows: readonly BandRow[], column: number, end: number): number {
  let best = column;
  let size = 0;
  for (let row = column; row <= end; row += 1) {
    const here = rows[row];
    const there = here === undefined ? 0 : Math.abs(entryOf(here, column)[0]);
    if (there > size) [best, size] = [row, there];
  }
  return best;
}

/** A row less `factor` times the pivot row; its entry in the pivot's column is gone. */
function eliminated(row: BandRow, pivot: BandRow, factor: DoubleDouble): BandRow {
  const first = pivot.first + 1;
  const end = Math.max(
    row.first + row.entries.length,
    pivot.first + pivot.entries.length,
  );
  const entries: DoubleDouble[] = [];
  for (let column = first; column < end; column += 1)
    entries.push(
      subtract(entryOf(row, column), multiply(factor, entryOf(pivot, column))),
    );
  return { first, entries };
}

/** The vector x for which matrix · x = right-hand side. */
export function solveBandedLu(
  { upper, steps, scales }: BandedLu,
  rightHandSide: readonly DoubleDouble[],
): readonly DoubleDouble[] {
  const x = rightHandSide.map(([high, low], i): DoubleDouble => {
    const scale = scales[i] ?? 1;
    return [high * scale, low * scale];
  });
  for (const [column, { pivotRow, factors }] of steps.entries()) {
    const value = entryAt(x, pivotRow);
    x[pivotRow] = entryAt(x, column);
    x[column] = value;
    for (const { row, factor } of factors)
      x[row] = subtract(entryAt(x, row), multiply(factor, value));
  }
  for (let i = upper.length - 1; i >= 0; i -= 1) {
    const { entries } = upper[i] ?? { entries: [] };
    let rest = entryAt(x, i);
    for (let k = 1; k < entries.length; k += 1)
      rest = subtract(rest, multiply(entryAt(entries, k), entryAt(x, i + k)));
    x[i] = divide(rest, entryAt(entries, 0));
  }
  return x;
}
