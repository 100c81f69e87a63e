import type { PlacedGlyph } from '../drawing/index.ts';
import type { Face, FontBook } from '../font/index.ts';
import type { OpenPdf } from './open-pdf.ts';
import type { PdfReference, PdfkitFont } from './pdfkit-internals.ts';

/** A face of which the glyphs drawn are embedded. */
export interface EmbeddedFace {
  /** Its name in page resources: F1, F2, … in the order of first use. */
  readonly id: string;
  readonly reference: PdfReference;
  readonly face: Face;
  /** The code that draws a glyph and is read back as the glyph's text. Throws on the empty box. */
  readonly codeFor: (glyph: PlacedGlyph) => GlyphCode;
}

/** How a glyph is written. */
export interface GlyphCode {
  /** Four hexadecimal digits. */
  readonly hex: string;
  /** What a reader of the file moves on by after it, ems. */
  readonly advance: number;
}

/** The faces of a document by name, each embedded from its first use on. */
export type EmbeddedFonts = (name: string) => EmbeddedFace;

/** Embeds the faces of a book as they are asked for. */
export function embedFonts(pdf: OpenPdf, fonts: FontBook): EmbeddedFonts {
  const known = new Map<string, EmbeddedFace>();
  return (name) => {
    const before = known.get(name);
    if (before !== undefined) return before;
    const face = fonts.face(name);
    const font = pdf.openFont(name, face.bytes);
    const { id } = font;
    const codeFor = openCodes(name, font);
    const embedded = { id, reference: font.ref(), face, codeFor };
    known.set(name, embedded);
    return embedded;
  };
}

/**
 * Codes for glyphs. A font file keeps one text a code, while one glyph may stand for several
 * (a hyphen and a hard hyphen, a space and a no-break space): such a glyph is embedded once a text,
 * so that copying finds what was written.
 */
function openCodes(name: string, font: PdfkitFont): EmbeddedFace['codeFor'] {
  const firsts = new Map<number, { readonly text: string; readonly code: GlyphCode }>();
  const others = new Map<string, GlyphCode>();
  const add = ({ id, text }: PlacedGlyph): GlyphCode => {
    if (!(id > 0 && id < font.font.numGlyphs))
      throw new RangeError(`${name} has no glyph ${id} to draw “${text}” with.`);
    if (text === '') throw new RangeError(`Glyph ${id} of ${name} stands for no text.`);
    const code = font.subset.glyphs.push(id) - 1;
    const advance = font.font.getGlyph(id).advanceWidth * font.scale;
    font.widths[code] = advance;
    font.unicode[code] = Array.from(text, (letter) => letter.codePointAt(0) ?? 0);
    return { hex: code.toString(16).padStart(4, '0'), advance: advance / 1000 };
  };
  return (glyph) => {
    const first = firsts.get(glyph.id);
    if (first?.text === glyph.text) return first.code;
    if (first === undefined) {
      const code = add(glyph);
      firsts.set(glyph.id, { text: glyph.text, code });
      return code;
    }
    const key = `${glyph.id} ${glyph.text}`;
    const code = others.get(key) ?? add(glyph);
    others.set(key, code);
    return code;
  };
}
