import { textWidth } from './text-width.ts';

/**
 * A text as lines no wider than `width` columns, broken at blanks; no-break spaces hold, and a word
 * that is wider than a whole line is cut. Line breaks in the text stay. Always one line at least.
 */
export function wrapText(text: string, width: number): readonly string[] {
  return text.split('\n').flatMap((line) => wrapLine(line, Math.max(1, width)));
}

function wrapLine(line: string, width: number): readonly string[] {
  const lines: string[] = [];
  let current = '';
  for (const word of line.split(/[ \t]+/u).filter((one) => one !== '')) {
    const joined = current === '' ? word : `${current} ${word}`;
    if (textWidth(joined) <= width) {
      current = joined;
      continue;
    }
    if (current !== '') lines.push(current);
    const pieces = cutWord(word, width);
    lines.push(...pieces.slice(0, -1));
    current = pieces.at(-1) ?? '';
  }
  return [...lines, current];
}

/** A word in pieces that fit; a single character may be wider than the line. */
function cutWord(word: string, width: number): readonly string[] {
  const pieces: string[] = [];
  let piece = '';
  for (const character of word) {
    if (piece !== '' && textWidth(piece + character) > width) {
      pieces.push(piece);
      piece = '';
    }
    piece += character;
  }
  return [...pieces, piece];
}

/** Columns of the widest word, which no wrapping can better without a cut. */
export function widestWord(text: string): number {
  return Math.max(0, ...text.split(/[ \t\n]+/u).map(textWidth));
}
