/**
 * Opens font files and measures text.
 *
 * A font book opens its faces when they are first asked for and answers glyph numbers and
 * advances in ems. Two kinds of face share one interface: text faces, which are shaped with
 * kerning, ligatures and features, and equation faces, which set one glyph a character. A
 * character that no face has is found beforehand (missingCharacters) and reported to the user;
 * nothing here ever draws the empty box of a missing glyph.
 *
 * @module
 */
export type { Face, Feature, FontBook, MeasuredGlyph } from './font-book.ts';
export { faceNames, openFonts } from './open-fonts.ts';
export { measureText } from './measure-text.ts';
export type { MeasuredText } from './measure-text.ts';
export { fallbackFor, missingCharacters } from './fallback.ts';
export { codePoint, spellOut } from './spell-out.ts';
export type { SpelledOut } from './spell-out.ts';
export { outlineText } from './outline-text.ts';
export type { OutlinedText } from './outline-text.ts';
export { setText } from './set-text.ts';
export type { SetText, TextStyle } from './set-text.ts';
export { boundedCache } from './bounded-cache.ts';
export type { BoundedCache } from './bounded-cache.ts';
