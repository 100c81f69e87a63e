import { create } from 'fontkit';
import type { Font } from 'fontkit';
import type { Face, Feature, MeasuredGlyph } from './font-book.ts';
import { shapeWords } from './shape-words.ts';

/** How a face turns text into glyphs. */
export interface FaceOptions {
  /**
   * `opentype`: kerning, ligatures and features. `none`: one glyph a character with its own
   * advance, as in KaTeX's faces, which have no kerning, no ligatures and no features.
   */
  readonly shaping: 'opentype' | 'none';
}

/** Combining marks (U+0300–036F): they would need a glyph shifted over its neighbour. */
function isCombining(codePoint: number): boolean {
  return codePoint >= 0x0300 && codePoint <= 0x036f;
}

/**
 * Opens a TrueType file as a face. Combining marks count as missing from a face that is shaped
 * by `opentype`, because a run of glyphs has no place to say how far a mark moves; a letter that
 * exists composed (é) is composed before it is shaped. Throws where the bytes are no font.
 */
export function openFace(name: string, bytes: Uint8Array, options: FaceOptions): Face {
  const font = parse(name, bytes);
  const em = font.unitsPerEm;
  const glyphs = new Map<number, MeasuredGlyph | undefined>();

  const lookUp = (codePoint: number): MeasuredGlyph | undefined => {
    if (!font.hasGlyphForCodePoint(codePoint)) return undefined;
    if (options.shaping === 'opentype' && isCombining(codePoint)) return undefined;
    const text = String.fromCodePoint(codePoint);
    // Shaping composes what it is given (U+0374 becomes U+02B9); what comes out must be in the face too.
    const composed = options.shaping === 'opentype' ? text.normalize('NFC') : text;
    if (
      Array.from(composed).some(
        (one) => !font.hasGlyphForCodePoint(one.codePointAt(0) ?? 0),
      )
    )
      return undefined;
    const glyph = font.glyphForCodePoint(codePoint);
    return { id: glyph.id, advance: glyph.advanceWidth / em, text };
  };
  const glyphFor = (codePoint: number): MeasuredGlyph | undefined => {
    const known = glyphs.get(codePoint);
    if (known !== undefined || glyphs.has(codePoint)) return known;
    const glyph = lookUp(codePoint);
    glyphs.set(codePoint, glyph);
    return glyph;
  };
  const oneByOne = (text: string): readonly MeasuredGlyph[] =>
    Array.from(text, (character) => {
      const glyph = glyphFor(character.codePointAt(0) ?? 0);
      if (glyph === undefined) throw missing(name, character);
      return glyph;
    });
  const asOpenType = (
    word: string,
    features: readonly Feature[],
  ): readonly MeasuredGlyph[] => {
    oneByOne(word); // refuses a character without a glyph before fontkit draws .notdef
    const run = font.layout(word, [...features]);
    const texts = textsOf(Array.from(word), run.glyphs);
    return run.glyphs.map((glyph, index) => ({
      id: glyph.id,
      advance: (run.positions[index]?.xAdvance ?? glyph.advanceWidth) / em,
      text: texts[index] ?? '',
    }));
  };

  return {
    name,
    ascent: font.ascent / em,
    descent: -font.descent / em,
    capHeight: heightOf(font, font.capHeight, 'H') / em,
    xHeight: heightOf(font, font.xHeight, 'z') / em,
    has: (codePoint) => glyphFor(codePoint) !== undefined,
    glyphFor,
    shape: options.shaping === 'opentype' ? shapeWords(asOpenType) : oneByOne,
    bytes,
  };
}

/**
 * The characters that each glyph of a shaped word stands for, taken from the word itself: what
 * fontkit notes on a glyph depends on what was looked up before (U+FB01 for f and i).
 */
function textsOf(
  characters: readonly string[],
  glyphs: readonly { readonly codePoints: readonly number[] }[],
): readonly string[] {
  if (glyphs.length === characters.length) return characters;
  let next = 0;
  return glyphs.map(({ codePoints }, index) => {
    const noted = String.fromCodePoint(...codePoints).normalize('NFKC');
    const isLast = index === glyphs.length - 1;
    const end = isLast
      ? characters.length
      : next + Math.max(1, Array.from(noted).length);
    const text = characters.slice(next, end).join('');
    next = end;
    return text;
  });
}

function parse(name: string, bytes: Uint8Array): Font {
  // fontkit reads any Uint8Array; its types ask for the subclass that Node's files come in.
  const opened = create(bytes as Buffer);
  if ('fonts' in opened) throw new RangeError(`${name} is a collection, not a font.`);
  return opened;
}

/** A height that the font states, or else that of a letter with a flat top (some of KaTeX's files state 0). */
function heightOf(font: Font, stated: number, letter: string): number {
  const codePoint = letter.codePointAt(0) ?? 0;
  if (stated > 0 || !font.hasGlyphForCodePoint(codePoint)) return stated;
  return font.glyphForCodePoint(codePoint).bbox.maxY;
}

function missing(face: string, character: string): RangeError {
  const number = (character.codePointAt(0) ?? 0).toString(16).toUpperCase();
  return new RangeError(
    `${face} has no glyph for "${character}" (U+${number.padStart(4, '0')}).`,
  );
}
