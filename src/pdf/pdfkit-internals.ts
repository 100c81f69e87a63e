/**
 * The few insides of PDFKit 0.20.2 that the writer uses, and nothing else of it: numbered objects
 * and their printing, subsets of fonts, the cross-reference table at the end. They are not part of
 * PDFKit's public types, which is why its version is pinned exactly.
 */

/**
 * A value as PDFKit prints it. A JavaScript string is a PDF *name*; a text is a {@link PdfText};
 * bytes are a hexadecimal string.
 */
export type PdfValue =
  | string
  | number
  | boolean
  | null
  | PdfText
  | Uint8Array
  | PdfReference
  | readonly PdfValue[]
  | PdfDictionary;

/** A dictionary under construction; entries that are undefined are not printed. */
export interface PdfDictionary {
  [key: string]: PdfValue | undefined;
}

/** A text string: at run time a `String` object, which is how PDFKit tells a text from a name. */
export interface PdfText {
  valueOf: () => string;
}

/** A numbered object of the file; it is printed when it ends, and must end once. */
export interface PdfReference {
  readonly id: number;
  data: PdfDictionary;
  /** Bytes of the stream so far; without any the object is no stream. */
  buffer: readonly Uint8Array[];
  readonly end: (bytes?: Uint8Array) => void;
  finalize: () => void;
}

/** A font of which the glyphs used are embedded. Indices into its lists are glyph codes in the file. */
export interface PdfkitFont {
  /** Its name in page resources: F1, F2, … in the order of opening. */
  readonly id: string;
  readonly font: {
    readonly getGlyph: (id: number) => { readonly advanceWidth: number };
    readonly numGlyphs: number;
  };
  /** Thousandths of an em in a unit of the font. */
  readonly scale: number;
  readonly subset: {
    /** Glyph number in the font of each code. */
    readonly glyphs: number[];
  };
  /** Advance of each code, thousandths of an em. */
  readonly widths: number[];
  /** Code points that each code stands for. */
  readonly unicode: (readonly number[])[];
  /** The font's object, which it makes when first asked. */
  readonly ref: () => PdfReference;
}

/** A document of PDFKit's. */
export interface PdfkitDocument {
  readonly _root: PdfReference;
  readonly _info: PdfReference;
  /** Where each object stands, by its number from 1; null where it is not written. */
  readonly _offsets: readonly (number | null)[];
  /** Objects that have not ended. */
  readonly _waiting: number;
  _offset: number;
  _id: Uint8Array;
  _font: PdfkitFont;
  info: Record<string, string>;
  ref: (data?: PdfDictionary) => PdfReference;
  font: (name: string) => unknown;
  registerFont: (name: string, bytes: Uint8Array) => unknown;
  _write: (data: string | Uint8Array) => void;
  endMarkings: () => void;
  endMetadata: () => void;
  endSubset: () => void;
  _addColorOutputIntent: () => void;
  /** Writes the cross-reference table once all objects have ended. */
  _finalize: () => void;
  end: () => void;
}
