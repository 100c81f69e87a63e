import { missingCharacters } from './fallback.ts';
import type { FontBook } from './font-book.ts';

/** A text that can be drawn, and the characters of it that could not. */
export interface SpelledOut {
  readonly text: string;
  /** Each once, in order: what the user is to be told of. */
  readonly missing: readonly string[];
}

/**
 * A text with every character that no face has a glyph for written as its number in brackets,
 * [U+1F600], so that nothing is ever drawn wrong in silence. Composed (NFC); soft hyphens are
 * taken out and unbreakable ones drawn as hyphens.
 */
export function spellOut(book: FontBook, face: string, text: string): SpelledOut {
  const drawn = text
    .normalize('NFC')
    .replaceAll('\u2011', '-')
    .replaceAll('\u00ad', '');
  const missing = missingCharacters(book, face, drawn);
  const spelled = missing.reduce(
    (before, character) => before.replaceAll(character, `[${codePoint(character)}]`),
    drawn,
  );
  return { text: spelled, missing };
}

/** A character's number as Unicode writes it: U+1F600. */
export function codePoint(character: string): string {
  const number = (character.codePointAt(0) ?? 0).toString(16).toUpperCase();
  return `U+${number.padStart(4, '0')}`;
}
