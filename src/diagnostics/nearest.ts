/** No folder of people's has more names of one kind; a file made to waste time may. */
const mostCandidates = 500;
/** Nor are names longer than this slips of one another. */
const longest = 60;

/**
 * The candidate that a word was most likely meant to be: the one that the fewest slips of the
 * keyboard away (a letter left out, put in, changed, or two neighbours swapped), provided that no
 * more than a third of the word is wrong. Case counts little: `b1` suggests `B1`. Undefined where
 * nothing is near; the first of equals otherwise. Only the first 500 candidates are looked at.
 */
export function nearest(
  word: string,
  candidates: Iterable<string>,
): string | undefined {
  const folded = word.toLowerCase();
  let best: { readonly candidate: string; readonly slips: number } | undefined;
  let looked = 0;
  for (const candidate of candidates) {
    looked += 1;
    if (looked > mostCandidates) break;
    const most = Math.max(1, Math.floor(Math.max(word.length, candidate.length) / 3));
    const slips = distance(folded, candidate.toLowerCase(), most);
    if (slips <= most && slips < folded.length && slips < (best?.slips ?? Infinity))
      best = { candidate, slips };
  }
  return best?.candidate;
}

function distance(word: string, candidate: string, most: number): number {
  const [short, long] =
    word.length < candidate.length ? [word, candidate] : [candidate, word];
  if (long.length > longest) return Infinity;
  // A word that goes on where the other stops (`pinned` for `pin`) is one slip, whatever it adds.
  if (short.length >= 3 && long.startsWith(short)) return word === candidate ? 0 : 1;
  // A slip changes at most two of the letters that occur: most candidates fall at this glance.
  const isFar = lettersApart(word, candidate) > 2 * most;
  if (isFar || long.length - short.length > most) return Infinity;
  return slipsBetween(word, candidate);
}

/** How many kinds of letters occur in one of two words only, a few kinds counted as one. */
function lettersApart(one: string, other: string): number {
  let apart = lettersOf(one) ^ lettersOf(other);
  let count = 0;
  for (; apart !== 0; apart &= apart - 1) count += 1;
  return count;
}

function lettersOf(word: string): number {
  let letters = 0;
  for (let at = 0; at < word.length; at += 1)
    letters |= 1 << (word.charCodeAt(at) & 31);
  return letters;
}

/**
 * Restricted Damerau–Levenshtein distance (optimal string alignment): F. J. Damerau, "A technique
 * for computer detection and correction of spelling errors", CACM 7 (3), 1964.
 */
function slipsBetween(one: string, other: string): number {
  let beforeLast: readonly number[] = [];
  let last: readonly number[] = Array.from({ length: other.length + 1 }, (_, at) => at);
  for (let row = 1; row <= one.length; row += 1) {
    const current = [row];
    for (let column = 1; column <= other.length; column += 1) {
      const changed = one[row - 1] === other[column - 1] ? 0 : 1;
      current[column] = Math.min(
        cell(last, column) + 1,
        cell(current, column - 1) + 1,
        cell(last, column - 1) + changed,
        isSwap({ one, row }, { other, column })
          ? cell(beforeLast, column - 2) + 1
          : Infinity,
      );
    }
    beforeLast = last;
    last = current;
  }
  return cell(last, other.length);
}

const cell = (row: readonly number[], column: number): number => row[column] ?? 0;

function isSwap(
  { one, row }: { readonly one: string; readonly row: number },
  { other, column }: { readonly other: string; readonly column: number },
): boolean {
  if (row < 2 || column < 2) return false;
  return one[row - 1] === other[column - 2] && one[row - 2] === other[column - 1];
}
