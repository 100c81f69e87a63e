/**
 * What went wrong, where, and what to try.
 *
 * A mistake of the user's is a `Diagnostic`: a code (its entry in `codes` explains it at length), a
 * sentence, a stretch of a file in character offsets, and hints. Stages return an `Outcome`, which
 * carries every diagnostic found beside the value, so that all mistakes are shown at once. Offsets
 * become lines and columns only where they are shown: `placeAt`, or `indexLines` once and `placeIn`
 * for many.
 *
 * @module
 */
export type { Diagnostic, Span } from './diagnostic.ts';
export { hasErrors } from './outcome.ts';
export type { Outcome } from './outcome.ts';
export { sortDiagnostics } from './sort-diagnostics.ts';
export { indexLines, placeAt, placeIn } from './source-text.ts';
export type { LineIndex, Place, SourceText } from './source-text.ts';
export { nearest } from './nearest.ts';
export { codes } from './codes.ts';
export type { Code } from './codes.ts';
export type { CodeEntry } from './code-entry.ts';
