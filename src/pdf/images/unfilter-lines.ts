/**
 * Undoes the line filters of PNG (ISO/IEC 15948, 9.2), which PDF knows as predictors 10 to 15. Each
 * line of `perLine` bytes stands behind a byte that names its filter; `step` is how many bytes the
 * pixel to the left is away. Undefined where a filter is unknown or the data are cut short.
 */
export function unfilterLines(
  data: Uint8Array,
  perLine: number,
  step: number,
): Uint8Array | undefined {
  const count = data.length / (perLine + 1);
  if (!Number.isInteger(count)) return undefined;
  if (count === 0) return new Uint8Array();
  const lines = new Uint8Array(count * perLine);
  let above: Uint8Array = new Uint8Array(perLine);
  for (let index = 0; index < count; index += 1) {
    const from = index * (perLine + 1);
    const line = lines.subarray(index * perLine, (index + 1) * perLine);
    line.set(data.subarray(from + 1, from + 1 + perLine));
    if (!undo(data[from] ?? 0, line, { above, step })) return undefined;
    above = line;
  }
  return lines;
}

interface Neighbours {
  readonly above: Uint8Array;
  readonly step: number;
}

function undo(filter: number, line: Uint8Array, { above, step }: Neighbours): boolean {
  if (filter > 4) return false;
  for (let index = 0; index < line.length && filter > 0; index += 1) {
    const left = index < step ? 0 : (line[index - step] ?? 0);
    const up = above[index] ?? 0;
    const upLeft = index < step ? 0 : (above[index - step] ?? 0);
    line[index] = (line[index] ?? 0) + guess(filter, left, up, upLeft);
  }
  return true;
}

function guess(filter: number, left: number, up: number, upLeft: number): number {
  if (filter === 1) return left;
  if (filter === 2) return up;
  return filter === 3 ? (left + up) >> 1 : paeth(left, up, upLeft);
}

/** The neighbour nearest to left + up − upper left (A. W. Paeth, "Image file compression made easy", Graphics Gems II, 1991). */
function paeth(left: number, up: number, upLeft: number): number {
  const sum = left + up - upLeft;
  const fromLeft = Math.abs(sum - left);
  const fromUp = Math.abs(sum - up);
  const fromUpLeft = Math.abs(sum - upLeft);
  if (fromLeft <= fromUp && fromLeft <= fromUpLeft) return left;
  return fromUp <= fromUpLeft ? up : upLeft;
}
