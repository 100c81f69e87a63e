/**
 * How much work a search may still do. It counts comparisons and not time, so that the same line
 * gets the same answer on every machine.
 */
export interface Effort {
  readonly limit: number;
  spent: number;
}

/** Comparisons that one line is worth: about a tenth of a second of work. */
export const lineEffort = 400_000;

/** An effort of which nothing is spent. */
export function freshEffort(limit: number = lineEffort): Effort {
  return { limit, spent: 0 };
}

/** Spends some of an effort; false where nothing was left to spend. */
export function spend(effort: Effort, count: number): boolean {
  if (effort.spent >= effort.limit) return false;
  effort.spent += count;
  return true;
}

/** True where the work had to stop. */
export function isSpent({ limit, spent }: Effort): boolean {
  return spent >= limit;
}
