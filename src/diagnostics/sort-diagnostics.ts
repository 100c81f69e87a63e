import type { Diagnostic } from './diagnostic.ts';

/**
 * Diagnostics in reading order: those without a place first, then file by file (in the order in
 * which files first appear in `files`, others after them by name) and by offset. Equals keep their order.
 */
export function sortDiagnostics(
  diagnostics: readonly Diagnostic[],
  files: readonly string[] = [],
): readonly Diagnostic[] {
  const ranks = new Map(files.map((file, index) => [file, index]));
  const rank = (diagnostic: Diagnostic): number =>
    diagnostic.span === undefined
      ? -1
      : (ranks.get(diagnostic.span.file) ?? files.length);
  return [...diagnostics].sort((one, other) => {
    const [a, b] = [one.span, other.span];
    if (rank(one) !== rank(other)) return rank(one) - rank(other);
    if (a === undefined || b === undefined) return 0;
    if (a.file !== b.file) return a.file < b.file ? -1 : 1;
    return a.start - b.start;
  });
}
