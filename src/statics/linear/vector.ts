/** A column of numbers. */
export type Vector = readonly number[];

/** The sum of products of two vectors of equal length. */
export function dot(a: Vector, b: Vector): number {
  let sum = 0;
  for (const [index, value] of a.entries()) sum += value * (b[index] ?? 0);
  return sum;
}

/** Σ factorᵢ · vectorᵢ; the vectors have `length` entries, which matters where there are none. */
export function combineVectors(
  factors: Vector,
  vectors: readonly Vector[],
  length: number,
): number[] {
  const sum = new Array<number>(length).fill(0);
  for (const [index, vector] of vectors.entries()) {
    const factor = factors[index] ?? 0;
    if (factor === 0) continue;
    for (const [row, value] of vector.entries())
      sum[row] = (sum[row] ?? 0) + factor * value;
  }
  return sum;
}
