/**
 * The candidate that a word was most likely meant to be: the one that the fewest slips of the
 * keyboard away (a letter left out, put in, changed, or two neighbours swapped), provided that no
 * more than a third of the word is wrong. Case counts little: `b1` suggests `B1`. Undefined where
 * nothing is near; the first of equals otherwise.
 */
export function nearest(
  word: string,
  candidates: readonly string[],
): string | undefined {
  const folded = word.toLowerCase();
  let best: { readonly candidate: string; readonly slips: number } | undefined;
  for (const candidate of candidates) {
    const most = Math.max(1, Math.floor(Math.max(word.length, candidate.length) / 3));
    if (Math.abs(candidate.length - word.length) > most) continue;
    const slips = slipsBetween(folded, candidate.toLowerCase());
    if (slips <= most && slips < folded.length && slips < (best?.slips ?? Infinity))
      best = { candidate, slips };
  }
  return best?.candidate;
}

/**
 * Restricted Damerau–Levenshtein distance (optimal string alignment): F. J. Damerau, "A technique
 * for computer detection and correction of spelling errors", CACM 7 (3), 1964.
 */
function slipsBetween(one: string, other: string): number {
  let beforeLast: number[] = [];
  let last = Array.from({ length: other.length + 1 }, (_, index) => index);
  for (let row = 1; row <= one.length; row += 1) {
    const current = [row];
    for (let column = 1; column <= other.length; column += 1) {
      const same = one[row - 1] === other[column - 1];
      const swapped =
        row > 1 &&
        column > 1 &&
        one[row - 1] === other[column - 2] &&
        one[row - 2] === other[column - 1];
      current[column] = Math.min(
        (last[column] ?? 0) + 1,
        (current[column - 1] ?? 0) + 1,
        (last[column - 1] ?? 0) + (same ? 0 : 1),
        swapped ? (beforeLast[column - 2] ?? 0) + 1 : Infinity,
      );
    }
    beforeLast = last;
    last = current;
  }
  return last[other.length] ?? 0;
}
