/** Beyond so many comparisons nothing is matched: all of it counts as changed. */
const mostCells = 9e6;

/**
 * The longest common subsequence of two lists of keys, as pairs of places in them, in order. What
 * both lists begin and end with alike is matched before the search, so that a change in a long
 * list costs little.
 */
export function matchKeys(
  earlier: readonly string[],
  later: readonly string[],
): readonly (readonly [earlier: number, later: number])[] {
  const shorter = Math.min(earlier.length, later.length);
  let head = 0;
  while (head < shorter && earlier[head] === later[head]) head += 1;
  let tail = 0;
  while (tail < shorter - head && earlier.at(-1 - tail) === later.at(-1 - tail))
    tail += 1;
  const inner = search(
    earlier.slice(head, earlier.length - tail),
    later.slice(head, later.length - tail),
  );
  return [
    ...Array.from({ length: head }, (_, index) => [index, index] as const),
    ...inner.map(([one, other]) => [one + head, other + head] as const),
    ...Array.from({ length: tail }, (_, index) => {
      const back = tail - index;
      return [earlier.length - back, later.length - back] as const;
    }),
  ];
}

/** The textbook's table: lengths of the longest match of what stands from each place on. */
function search(
  earlier: readonly string[],
  later: readonly string[],
): readonly (readonly [number, number])[] {
  const width = later.length + 1;
  if (earlier.length * later.length > mostCells) return [];
  const longest = new Uint32Array((earlier.length + 1) * width);
  const at = (row: number, column: number): number =>
    longest[row * width + column] ?? 0;
  for (let row = earlier.length - 1; row >= 0; row -= 1) {
    for (let column = later.length - 1; column >= 0; column -= 1) {
      longest[row * width + column] =
        earlier[row] === later[column]
          ? at(row + 1, column + 1) + 1
          : Math.max(at(row + 1, column), at(row, column + 1));
    }
  }
  const pairs: [number, number][] = [];
  let [row, column] = [0, 0];
  while (row < earlier.length && column < later.length) {
    if (earlier[row] === later[column]) {
      pairs.push([row, column]);
      row += 1;
      column += 1;
    } else if (at(row + 1, column) >= at(row, column + 1)) row += 1;
    else column += 1;
  }
  return pairs;
}
