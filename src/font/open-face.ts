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
    const glyph = font.glyphForCodePoint(codePoint);
    const text = String.fromCodePoint(codePoint);
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
    return run.glyphs.map((glyph, index) => ({
      id: glyph.id,
      advance: (run.positions[index]?.xAdvance ?? glyph.advanceWidth) / em,
      text: String.fromCodePoint(...glyph.codePoints),
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
