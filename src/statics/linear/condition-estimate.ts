import { solveLdl, type LdlFactors, type SymmetricBand } from './banded-ldl.ts';
import { exact } from './double-double.ts';
import type { Vector } from './vector.ts';

/** More steps than this are never needed: the estimate grows at each, and nearly always stops at the second. */
const mostSteps = 5;

/**
 * The condition number of a positive definite band in the sum norm, scaled to a unit diagonal
 * beforehand so that it does not change with units. The norm of the inverse is estimated from
 * a few solutions: nearly always right to a factor of 3, and never too great. 1 where there
 * are no rows.
 * — Hager (1984), in Higham, Accuracy and Stability of Numerical Algorithms, 2nd ed., section
 * 15.2 (from memory).
 */
export function conditionEstimate(matrix: SymmetricBand, factors: LdlFactors): number {
  const count = matrix.length;
  if (count === 0) return 1;
  const roots = matrix.map((row) => Math.sqrt(row[0]?.[0] ?? 1));
  const solve = (rightHandSide: Vector): number[] => {
    const plain = rightHandSide.map((value, i) => exact(value * (roots[i] ?? 1)));
    return solveLdl(factors, plain).map(([high], i) => high * (roots[i] ?? 1));
  };
  return sumNorm(matrix, roots) * inverseNorm(count, solve);
}

/** The greatest column sum of sizes, each row and column divided by the root of its diagonal entry. */
function sumNorm(matrix: SymmetricBand, roots: Vector): number {
  const sums = matrix.map(() => 0);
  for (const [i, row] of matrix.entries()) {
    for (const [k, [high]] of row.entries()) {
      const j = i - k;
      if (j < 0) break;
      const size = Math.abs(high) / (roots[i] ?? 1) / (roots[j] ?? 1);
      sums[i] = (sums[i] ?? 0) + size;
      if (k > 0) sums[j] = (sums[j] ?? 0) + size;
    }
  }
  return greatest(sums);
}

function inverseNorm(
  count: number,
  solve: (rightHandSide: Vector) => number[],
): number {
  let start: Vector = new Array<number>(count).fill(1 / count);
  let best = 0;
  for (let step = 0; step < mostSteps; step += 1) {
    const y = solve(start);
    const norm = y.reduce((sum, value) => sum + Math.abs(value), 0);
    if (norm <= best) break;
    best = norm;
    const z = solve(y.map((value) => (value < 0 ? -1 : 1))).map(Math.abs);
    const top = greatest(z);
    const place = z.indexOf(top);
    start = new Array<number>(count).fill(0).with(place, 1);
  }
  return best;
}

/** The greatest of many values: a spread call takes only so many. */
function greatest(values: Vector): number {
  return values.reduce((most, value) => Math.max(most, value), 0);
}
