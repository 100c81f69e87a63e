import type { Span } from '../../diagnostics/index.ts';

/** A value that remembers who said it: the file (with the place), or a default of the program. */
export interface Stated<T> {
  readonly value: T;
  readonly origin: 'given' | 'default';
  /** The place in the file; absent for defaults. */
  readonly span?: Span;
}
