import { boundedCache } from './bounded-cache.ts';
import type { Feature, MeasuredGlyph } from './font-book.ts';

/** Shaped words kept a face: about 4 MB at most. */
const wordsKept = 8000;

type Shape = (text: string, features?: readonly Feature[]) => readonly MeasuredGlyph[];

/**
 * Turns a way of shaping one word into a way of shaping any text. Words and the spaces between
 * them are shaped apart, so that the width of a line is the sum of its words and spaces however
 * it is broken; kerning against a space is given up for that. Shaped words are remembered.
 */
export function shapeWords(
  shapeWord: (word: string, features: readonly Feature[]) => readonly MeasuredGlyph[],
): Shape {
  const words = boundedCache<readonly MeasuredGlyph[]>(wordsKept);
  return (text, features = []) => {
    const prefix = `${features.join(',')}|`;
    return text
      .normalize('NFC')
      .split(/(\s+)/u)
      .filter((part) => part !== '')
      .flatMap((part) => words.get(prefix + part, () => shapeWord(part, features)));
  };
}
