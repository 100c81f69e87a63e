/** A linear equation of scaled unknowns: Σ factor · unknown = known. */
export interface Row {
  readonly factors: readonly number[];
  readonly known: number;
}

/** What is left of a row's direction below this part of it is rounding: it says nothing new. */
const rankTolerance = 1e-9;

/**
 * The first rows, in their order, that are independent of one another, as many as there are
 * unknowns or fewer; by Gram and Schmidt, twice over (Golub and Van Loan, Matrix Computations, 5.2.8).
 */
export function independentRows(
  rows: readonly Row[],
  count: number,
): readonly number[] {
  const basis: (readonly number[])[] = [];
  const chosen: number[] = [];
  for (const [index, { factors }] of rows.entries()) {
    if (chosen.length === count) break;
    const size = lengthOf(factors);
    const left = withoutBasis(withoutBasis(factors, basis), basis);
    const rest = lengthOf(left);
    if (size === 0 || rest <= rankTolerance * size) continue;
    basis.push(left.map((factor) => factor / rest));
    chosen.push(index);
  }
  return chosen;
}

function withoutBasis(
  row: readonly number[],
  basis: readonly (readonly number[])[],
): readonly number[] {
  return basis.reduce((left, unit) => {
    const along = left.reduce((all, factor, i) => all + factor * (unit[i] ?? 0), 0);
    return left.map((factor, i) => factor - along * (unit[i] ?? 0));
  }, row);
}

function lengthOf(row: readonly number[]): number {
  return Math.hypot(...row);
}

/** The solution of as many independent rows as unknowns: Gauss, the greatest pivot of a column first. */
export function solveRows(rows: readonly Row[]): readonly number[] {
  const work = rows.map(({ factors, known }) => [...factors, known]);
  const count = work.length;
  for (let column = 0; column < count; column += 1) clearBelow(work, column);
  const found: number[] = Array.from({ length: count }, () => 0);
  for (let i = count - 1; i >= 0; i -= 1) {
    const row = work[i] ?? [];
    const later = found.reduce(
      (all, value, j) => (j > i ? all + value * (row[j] ?? 0) : all),
      0,
    );
    found[i] = ((row[count] ?? 0) - later) / (row[i] ?? 1);
  }
  return found;
}

/** Brings the greatest pivot of a column up and clears the column below it. */
function clearBelow(work: number[][], column: number): void {
  const [above] = work.splice(greatestRow(work, column), 1);
  if (above === undefined) return;
  work.splice(column, 0, above);
  for (const row of work.slice(column + 1)) {
    const factor = (row[column] ?? 0) / (above[column] ?? 1);
    for (let i = column; i < row.length; i += 1)
      row[i] = (row[i] ?? 0) - factor * (above[i] ?? 0);
  }
}

function greatestRow(work: readonly (readonly number[])[], column: number): number {
  let best = column;
  for (let i = column + 1; i < work.length; i += 1) {
    if (Math.abs(work[i]?.[column] ?? 0) > Math.abs(work[best]?.[column] ?? 0))
      best = i;
  }
  return best;
}
