/** What kind of slip a written quantity holds. */
export type QuantityProblemKind =
  /** A number where a unit belongs. */
  | 'bare-number'
  /** A unit that the table does not know. */
  | 'unknown-unit'
  /** A quantity that measures something else than what is expected. */
  | 'wrong-dimension'
  /** Not a number with a unit at all. */
  | 'malformed'
  /** NaN, an infinity, or a number too great or too small to be worked with. */
  | 'not-finite'
  /** A comma that separates no thousands. */
  | 'ambiguous-comma';

/** Why a text is no quantity, and where in the text; the reader adds what it was read for. */
export interface QuantityProblem {
  readonly kind: QuantityProblemKind;
  /** Offsets into the text read: `start` included, `end` not. */
  readonly start: number;
  readonly end: number;
  /** One sentence, lower case at the start, no full stop at the end. */
  readonly message: string;
  /** What to try, a short imperative sentence each. */
  readonly hints: readonly string[];
}

/** The head of a text too long to quote. */
export function quoted(text: string): string {
  return text.length > 40 ? `${text.slice(0, 37)}...` : text;
}
