import type { WorkerTerm } from './worker-terms.ts';

/** A line with the true values put in: what it comes to, and how far rounding can have moved that. */
export interface Balance {
  /** What the terms add up to; 0 for a true line. */
  readonly residual: number;
  /** The greatest term. */
  readonly size: number;
  /** What the written places leave open together, as roundings that know nothing of one another add up. */
  readonly rounding: number;
}

/** Adds up a line with every unknown at its true value; undefined where one is not known, or nothing is written. */
export function balanceOf(
  terms: readonly WorkerTerm[],
  truths: (key: string) => number | undefined,
): Balance | undefined {
  if (terms.length === 0) return undefined;
  let [residual, size, squares] = [0, 0, 0];
  for (const { constant, unknown, spread } of terms) {
    const truth = unknown === undefined ? 0 : truths(unknown.key);
    if (truth === undefined) return undefined;
    const worth = constant + (unknown?.share ?? 0) * truth;
    residual += worth;
    size = Math.max(size, Math.abs(worth));
    squares += (spread * worth) ** 2;
  }
  return { residual, size, rounding: 1.5 * Math.sqrt(squares) };
}

/** True where a line holds of the member, rounding of the last bits aside. */
export function holds({ residual, size }: Balance): boolean {
  return size > 0 && Math.abs(residual) <= 1e-6 * size;
}

/** True where a line holds as far as its written places can tell. */
export function holdsAsRounded({ residual, size, rounding }: Balance): boolean {
  return size > 0 && Math.abs(residual) <= rounding * (1 + 1e-6) + 1e-6 * size;
}
