import { rankTolerance } from '../tolerances.ts';
import { dot, type Vector } from './vector.ts';

/**
 * The singular value decomposition of the matrix whose COLUMNS are the vectors given, told as
 * what one asks of it here: which combinations of the vectors are long, and which vanish.
 */
export interface SingularValues {
  /** One a vector, from the greatest to the least. */
  readonly values: Vector;
  /** `combinations[i]` has unit length, and |Σⱼ combinations[i][j] · vectors[j]| = values[i]. */
  readonly combinations: readonly Vector[];
}

/** More sweeps than this never help: convergence is quadratic once the angles are small. */
const mostSweeps = 40;

/** Two columns this near to a right angle need no more turning. */
const orthogonality = 1e-15;

/**
 * Decomposes by one-sided Jacobi rotations: pairs of columns are turned against one another until
 * all stand at right angles; their lengths are then the singular values. Slow for great
 * matrices, but short, and accurate for small singular values, which decide stability.
 * — Golub & Van Loan, Matrix Computations, 4th ed., section 8.6.3 (from memory).
 */
export function singularValues(vectors: readonly Vector[]): SingularValues {
  const columns = vectors.map((vector) => [...vector]);
  const turns = vectors.map((_, i) => vectors.map((__, j) => (i === j ? 1 : 0)));
  const greatest = Math.max(0, ...columns.map((column) => Math.hypot(...column)));
  const floor = (greatest * orthogonality) ** 2;
  for (let sweep = 0; sweep < mostSweeps; sweep += 1) {
    if (!turnAllPairs(columns, turns, floor)) break;
  }
  const found = columns.map((column, index) => ({
    value: Math.hypot(...column),
    combination: turns[index] ?? [],
  }));
  found.sort((a, b) => b.value - a.value);
  return {
    values: found.map(({ value }) => value),
    combinations: found.map(({ combination }) => combination),
  };
}

/** One sweep; says whether any pair still had to be turned. */
function turnAllPairs(columns: number[][], turns: number[][], floor: number): boolean {
  let turned = false;
  for (const [p, first] of columns.entries()) {
    for (let q = p + 1; q < columns.length; q += 1) {
      const second = columns[q] ?? [];
      const a = dot(first, first);
      const b = dot(second, second);
      const c = dot(first, second);
      if (Math.abs(c) <= Math.max(orthogonality * Math.sqrt(a * b), floor)) continue;
      turned = true;
      // The smaller root of t² + 2ζt − 1 = 0 turns by at most 45°, which keeps the sweep calm.
      const zeta = (b - a) / (2 * c);
      const t = (zeta < 0 ? -1 : 1) / (Math.abs(zeta) + Math.hypot(1, zeta));
      const cosine = 1 / Math.hypot(1, t);
      rotate(first, second, cosine, cosine * t);
      rotate(turns[p] ?? [], turns[q] ?? [], cosine, cosine * t);
    }
  }
  return turned;
}

function rotate(first: number[], second: number[], cosine: number, sine: number): void {
  for (const [row, a] of first.entries()) {
    const b = second[row] ?? 0;
    first[row] = cosine * a - sine * b;
    second[row] = sine * a + cosine * b;
  }
}

/** How many singular values are more than noise beside `scale`, by default the greatest of them. */
export function rankOf(decomposition: SingularValues, scale?: number): number {
  const limit = rankTolerance * (scale ?? decomposition.values[0] ?? 0);
  return decomposition.values.filter((value) => value > limit).length;
}

/** The combinations of the vectors that vanish: an orthonormal basis of the null space. */
export function nullSpaceOf(
  decomposition: SingularValues,
  scale?: number,
): readonly Vector[] {
  return decomposition.combinations.slice(rankOf(decomposition, scale));
}

/** Greatest over least singular value that is not zero; 1 where all are. */
export function conditionOf(decomposition: SingularValues): number {
  const rank = rankOf(decomposition);
  if (rank === 0) return 1;
  return (decomposition.values[0] ?? 1) / (decomposition.values[rank - 1] ?? 1);
}
