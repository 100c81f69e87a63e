import { dropNoise } from '../tolerances.ts';
import { dot, type Vector } from './vector.ts';

/** A square matrix taken apart into triangles, rows exchanged: factor once, solve often. */
export interface LuFactors {
  /** L below the diagonal (its own diagonal is 1), U on and above it. */
  readonly rows: readonly Vector[];
  /** Row i of the factors was row `order[i]` of the matrix. */
  readonly order: readonly number[];
  /** The matrix itself, by rows, for refining a solution. */
  readonly matrix: readonly Vector[];
}

/**
 * Factors a square matrix given by rows, with partial pivoting.
 * — Golub & Van Loan, Matrix Computations, 4th ed., section 3.4 (from memory).
 *
 * @throws RangeError where the matrix is not square or a pivot is only noise beside the greatest
 * entry: whoever calls has to know the rank beforehand.
 */
export function factorLu(matrix: readonly Vector[]): LuFactors {
  const rows = matrix.map((row) => [...row]);
  const order = rows.map((_, index) => index);
  const size = Math.max(0, ...matrix.flat().map(Math.abs));
  for (let column = 0; column < rows.length; column += 1) {
    const pivotRow = indexOfPivot(rows, column);
    swap(rows, column, pivotRow);
    swap(order, column, pivotRow);
    const pivot = rows[column] ?? [];
    const head = pivot[column] ?? 0;
    if (pivot.length !== rows.length || dropNoise(head, size, 1e-14) === 0) {
      throw new RangeError(`cannot factor: pivot ${head} in column ${column}`);
    }
    for (const row of rows.slice(column + 1)) {
      const factor = (row[column] ?? 0) / head;
      row[column] = factor;
      for (let k = column + 1; k < row.length; k += 1) {
        row[k] = (row[k] ?? 0) - factor * (pivot[k] ?? 0);
      }
    }
  }
  return { rows, order, matrix };
}

function indexOfPivot(rows: readonly Vector[], column: number): number {
  let best = column;
  for (let row = column + 1; row < rows.length; row += 1) {
    if (Math.abs(rows[row]?.[column] ?? 0) > Math.abs(rows[best]?.[column] ?? 0))
      best = row;
  }
  return best;
}

function swap(list: unknown[], a: number, b: number): void {
  [list[a], list[b]] = [list[b], list[a]];
}

/** The vector x for which matrix · x = right-hand side, refined once against the matrix itself. */
export function solveLu(factors: LuFactors, rightHandSide: Vector): number[] {
  const first = substitute(factors, rightHandSide);
  const rest = factors.matrix.map(
    (row, i) => (rightHandSide[i] ?? 0) - dot(row, first),
  );
  const correction = substitute(factors, rest);
  return first.map((value, i) => value + (correction[i] ?? 0));
}

/** Down through L, then up through U. */
function substitute({ rows, order }: LuFactors, rightHandSide: Vector): number[] {
  const x = order.map((row) => rightHandSide[row] ?? 0);
  for (const [i, row] of rows.entries()) {
    x[i] = (x[i] ?? 0) - dot(row.slice(0, i), x);
  }
  for (const [i, row] of [...rows.entries()].reverse()) {
    const rest = row.map((entry, j) => (j > i ? entry : 0));
    x[i] = ((x[i] ?? 0) - dot(rest, x)) / (row[i] ?? 1);
  }
  return x;
}
