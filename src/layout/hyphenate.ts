import createHyphenator from 'hyphen';
import patterns from 'hyphen/patterns/en-us.js';

const mark = '\u00ad';
const shortestWord = 6;
const shortestTail = 3;

/**
 * Splits an English word where it may be hyphenated, by Liang's patterns ("Word Hy-phen-a-tion by
 * Com-put-er", Stanford 1983): at least two letters stay before a hyphen and three go after it, as
 * in TeX. Words with capitals or digits are names and marks here and stay whole. The pieces join
 * to the word.
 */
export type Hyphenate = (word: string) => readonly string[];

/** Opens a hyphenator with a memory of the words that it has met. */
export function openHyphenator(): Hyphenate {
  const hyphenate = createHyphenator(patterns, {
    hyphenChar: mark,
    minWordLength: shortestWord,
    html: false,
  });
  const known = new Map<string, readonly string[]>();
  return (word) => {
    const before = known.get(word);
    if (before !== undefined) return before;
    const pieces = mayBeSplit(word)
      ? joinShortTail(hyphenate(word).split(mark))
      : [word];
    known.set(word, pieces);
    return pieces;
  };
}

function mayBeSplit(word: string): boolean {
  const letters = /^[^\p{L}]*(\p{L}+)[^\p{L}]*$/u.exec(word)?.[1] ?? '';
  return letters.length >= shortestWord && letters === letters.toLowerCase();
}

/** Joins the last piece to the one before where it has fewer than three letters of its own. */
function joinShortTail(pieces: readonly string[]): readonly string[] {
  const tail = pieces.at(-1) ?? '';
  const letters = tail.replace(/[^\p{L}]/gu, '').length;
  if (pieces.length < 2 || letters >= shortestTail) return pieces;
  return [...pieces.slice(0, -2), (pieces.at(-2) ?? '') + tail];
}
