import type { CheckFact } from '../steps.ts';

/** A check worked on the numbers of one case. A false one stops the sheet. */
export interface CheckOutcome {
  /** What the sheet prints of it; absent for a check that is worked without being printed. */
  readonly fact?: CheckFact;
  readonly holds: boolean;
  /** How far from holding, for the diagnostic: `moments about C leave −8.36 kip·ft`. */
  readonly finding: string;
}

/** How close is equal, as a share of the sizes involved: far above rounding, far below a printed place. */
export const agreementTolerance: number = 1e-9;

/** True where two values agree to the tolerance, judged by a scale. */
export function agree(a: number, b: number, scale: number): boolean {
  return (
    Math.abs(a - b) <= agreementTolerance * Math.max(scale, Math.abs(a), Math.abs(b))
  );
}
