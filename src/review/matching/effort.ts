/**
 * How much work a search may still do. It counts comparisons and not time, so that the same line
 * gets the same answer on every machine.
 */
export interface Effort {
  readonly limit: number;
  spent: number;
  /** What this is a share of: spending here spends there too. */
  readonly of?: Effort;
}

/** Comparisons that one line is worth: about a tenth of a second of work. */
export const lineEffort = 400_000;

/** Comparisons that all lines of a sheet are worth together, under all loadings that are tried. */
export const sheetEffort = 1_400_000;

/** What every line may spend, however much its sheet has spent: enough for a few terms with one slip. */
export const leastEffort = 3000;

/** An effort of which nothing is spent. */
export function freshEffort(limit: number = lineEffort): Effort {
  return { limit, spent: 0 };
}

/** The effort of one line: no more than a line is worth, nor than is left of its sheet's. */
export function effortOfLine(sheet: Effort): Effort {
  const left = Math.min(lineEffort, sheet.limit - sheet.spent);
  return { limit: Math.max(left, leastEffort), spent: 0, of: sheet };
}

/** An equal share of what is left of an effort, for the first of so many that go on from it. */
export function shareOf(whole: Effort, parts: number): Effort {
  const left = Math.max(0, whole.limit - whole.spent);
  return { limit: Math.floor(left / parts), spent: 0, of: whole };
}

/** Spends some of an effort; false where nothing was left to spend. */
export function spend(effort: Effort, count: number): boolean {
  if (isSpent(effort)) return false;
  for (let one: Effort | undefined = effort; one !== undefined; one = one.of)
    one.spent += count;
  return true;
}

/** True where the work had to stop. */
export function isSpent({ limit, spent }: Effort): boolean {
  return spent >= limit;
}
