/**
 * What went wrong, where, and what to try.
 *
 * @module
 */
export type { Diagnostic, Span } from './diagnostic.ts';
export { hasErrors } from './outcome.ts';
export type { Outcome } from './outcome.ts';
export { placeAt } from './source-text.ts';
export type { Place, SourceText } from './source-text.ts';
export { codes } from './codes.ts';
export type { Code } from './codes.ts';
export type { CodeEntry } from './code-entry.ts';
