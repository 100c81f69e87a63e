import type { Face, FontBook } from './font-book.ts';

/**
 * Where to look for a character that a face lacks, nearest in weight and slope first. The last
 * three are looked through for every face: symbols such as ∥ and □ exist in one weight only.
 */
const nearest: Readonly<Record<string, readonly string[]>> = {
  'text-italic': ['text', 'KaTeX_Main-Italic'],
  'text-semibold': ['text-bold', 'KaTeX_Main-Bold'],
  'text-semibold-italic': ['text-semibold', 'KaTeX_Main-BoldItalic', 'KaTeX_Main-Bold'],
  'text-bold': ['text-semibold', 'KaTeX_Main-Bold'],
};
const everywhere = [
  'KaTeX_Main-Regular',
  'KaTeX_AMS-Regular',
  'KaTeX_Math-Italic',
  'text',
] as const;

/**
 * The face that a character is set in where the text around it is set in the face called `base`:
 * that face itself where it has the glyph, else the first of the chain that has. Undefined where
 * no face has it; `character` is one code point.
 */
export function fallbackFor(
  book: FontBook,
  character: string,
  base: string,
): Face | undefined {
  const codePoint = character.codePointAt(0) ?? 0;
  const own = book.face(base);
  if (own.has(codePoint)) return own;
  for (const name of [...(nearest[base] ?? []), ...everywhere]) {
    const face = book.face(name);
    if (face.has(codePoint)) return face;
  }
  return undefined;
}

/**
 * The characters of a text that no face has a glyph for, each once, in order: what is to be told
 * to the user before anything is drawn.
 */
export function missingCharacters(
  book: FontBook,
  base: string,
  text: string,
): readonly string[] {
  const characters = new Set(text.normalize('NFC'));
  return [...characters].filter(
    (character) => fallbackFor(book, character, base) === undefined,
  );
}
