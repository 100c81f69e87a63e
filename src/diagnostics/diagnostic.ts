import type { Code } from './codes.ts';

/** A stretch of a file, as character offsets into its text: `start` included, `end` not. */
export interface Span {
  /** Path of the file, relative to the project folder, with forward slashes. */
  readonly file: string;
  readonly start: number;
  readonly end: number;
}

/**
 * What went wrong, where, and what to try. A user's mistake is always such a value and never
 * an exception. Offsets travel inside; line and column are worked out only where it is shown.
 */
export interface Diagnostic {
  /** An `error` stops the part it concerns; a `remark` does not. */
  readonly severity: 'error' | 'remark';
  readonly code: Code;
  /** One sentence, lower case at the start, no full stop at the end. */
  readonly message: string;
  /** The place; absent where no file is to blame (a folder that is missing). */
  readonly span?: Span;
  /** What to try, a short imperative sentence each. */
  readonly hints: readonly string[];
  /** The mark of the member that the mistake is confined to; absent when it is the project's. */
  readonly member?: string;
}
