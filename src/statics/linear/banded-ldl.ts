import {
  divide,
  entryAt,
  multiply,
  subtract,
  type DoubleDouble,
} from './double-double.ts';

/**
 * A symmetric matrix whose entries lie near the diagonal: `rows[i][k]` is the entry in row i and
 * column i − k. The storage, and the work of factoring, grow with the number of rows only.
 */
export type SymmetricBand = readonly (readonly DoubleDouble[])[];

/** L and D of L D Lᵀ in the places of the matrix; the diagonal of L, all ones, makes room for D. */
export interface LdlFactors {
  readonly rows: SymmetricBand;
}

/**
 * Factors a positive definite band without exchanging rows.
 * — Golub & Van Loan, Matrix Computations, 4th ed., section 4.3.5 (from memory).
 *
 * @throws RangeError where a pivot is not positive: whoever calls has to know that the structure
 * is stable.
 */
export function factorLdl(matrix: SymmetricBand): LdlFactors {
  const rows: DoubleDouble[][] = [];
  const entry = (row: number, column: number): DoubleDouble =>
    entryAt(rows[row], row - column);
  for (const [i, given] of matrix.entries()) {
    const row = [...given];
    rows.push(row);
    const first = Math.max(0, i - given.length + 1);
    // L·D of the row comes first: each later column needs it of the earlier ones.
    for (let j = first; j < i; j += 1) {
      let rest = entryAt(row, i - j);
      for (let k = first; k < j; k += 1)
        rest = subtract(rest, multiply(entryAt(row, i - k), entry(j, k)));
      row[i - j] = rest;
    }
    let pivot = entryAt(row, 0);
    for (let k = first; k < i; k += 1) {
      const product = entryAt(row, i - k);
      const factor = divide(product, entry(k, k));
      pivot = subtract(pivot, multiply(product, factor));
      row[i - k] = factor;
    }
    if (!(pivot[0] > 0))
      throw new RangeError(`cannot factor: pivot ${pivot[0]} in row ${i}`);
    row[0] = pivot;
  }
  return { rows };
}

/** The vector x for which matrix · x = right-hand side. */
export function solveLdl(
  { rows }: LdlFactors,
  rightHandSide: readonly DoubleDouble[],
): readonly DoubleDouble[] {
  const x = [...rightHandSide];
  for (const [i, row] of rows.entries()) {
    let rest = entryAt(x, i);
    for (let k = 1; k < row.length && k <= i; k += 1)
      rest = subtract(rest, multiply(entryAt(row, k), entryAt(x, i - k)));
    x[i] = rest;
  }
  for (const [i, row] of rows.entries()) x[i] = divide(entryAt(x, i), entryAt(row, 0));
  for (let i = rows.length - 1; i >= 0; i -= 1) {
    const row = rows[i] ?? [];
    const value = entryAt(x, i);
    for (let k = 1; k < row.length && k <= i; k += 1)
      x[i - k] = subtract(entryAt(x, i - k), multiply(entryAt(row, k), value));
  }
  return x;
}
