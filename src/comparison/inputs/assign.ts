/**
 * The pairing of least total cost between rows and columns, where leaving a row or a column alone
 * costs `alone`: for each row its column, or undefined. Kuhn's Hungarian method in the form with
 * potentials (Jonker and Volgenant, "A shortest augmenting path algorithm for dense and sparse
 * linear assignment problems", Computing 38, 1987), whose work grows with the cube of the size.
 */
export function assign(
  costs: readonly (readonly number[])[],
  alone: number,
): readonly (number | undefined)[] {
  const rows = costs.length;
  const columns = costs[0]?.length ?? 0;
  const size = rows + columns;
  // Made square: a row may take a place of its own, and so may a column; two such places cost nothing.
  const cost = (row: number, column: number): number => {
    if (row < rows && column < columns) return costs[row]?.[column] ?? Infinity;
    return row < rows || column < columns ? alone : 0;
  };
  const rowOf = pairedRows(size, cost);
  const found = new Array<number | undefined>(rows).fill(undefined);
  for (let column = 0; column < columns; column += 1) {
    const row = rowOf[column];
    if (row !== undefined && row < rows) found[row] = column;
  }
  return found;
}

/** For each column of a square table its row, so that the sum of costs is least. */
function pairedRows(
  size: number,
  cost: (row: number, column: number) => number,
): readonly number[] {
  const state: Potentials = {
    ofRow: new Float64Array(size),
    ofColumn: new Float64Array(size),
    rowOf: new Int32Array(size).fill(-1),
  };
  for (let row = 0; row < size; row += 1) augment(row, state, size, cost);
  return [...state.rowOf];
}

interface Potentials {
  readonly ofRow: Float64Array;
  readonly ofColumn: Float64Array;
  /** Row paired with each column, −1 for none yet. */
  readonly rowOf: Int32Array;
}

// Grows a tree of shortest paths from the row until it meets a column that is free, then turns the path round.
function augment(
  start: number,
  { ofRow, ofColumn, rowOf }: Potentials,
  size: number,
  cost: (row: number, column: number) => number,
): void {
  const least = new Float64Array(size).fill(Infinity);
  const before = new Int32Array(size).fill(-1);
  const isDone = new Uint8Array(size);
  let row = start;
  let reached = -1;
  for (let round = 0; round < size; round += 1) {
    let next = -1;
    for (let column = 0; column < size; column += 1) {
      if (isDone[column] === 1) continue;
      const slack = cost(row, column) - at(ofRow, row) - at(ofColumn, column);
      if (slack < at(least, column)) {
        least[column] = slack;
        before[column] = reached;
      }
      if (next < 0 || at(least, column) < at(least, next)) next = column;
    }
    const step = at(least, next);
    ofRow[start] = at(ofRow, start) + step;
    for (let column = 0; column < size; column += 1) {
      if (isDone[column] === 1) {
        const paired = at(rowOf, column);
        ofRow[paired] = at(ofRow, paired) + step;
        ofColumn[column] = at(ofColumn, column) - step;
      } else least[column] = at(least, column) - step;
    }
    isDone[next] = 1;
    reached = next;
    if (at(rowOf, next) < 0) break;
    row = at(rowOf, next);
  }
  for (let column = reached; column >= 0; column = at(before, column)) {
    const from = at(before, column);
    rowOf[column] = from < 0 ? start : at(rowOf, from);
  }
}

const at = (list: Float64Array | Int32Array, place: number): number => list[place] ?? 0;
