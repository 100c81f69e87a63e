/** OpenType features that the package asks for: tabular figures, small capitals, superiors, fractions. */
export type Feature = 'tnum' | 'smcp' | 'c2sc' | 'sups' | 'frac';

/** One glyph of a measured text: its number, its advance in ems, the text that it stands for. */
export interface MeasuredGlyph {
  readonly id: number;
  readonly advance: number;
  readonly text: string;
}

/** One face of a font book. All measures in ems (1 em = the font size). */
export interface Face {
  readonly name: string;
  /** Height of ascenders, depth of descenders (positive), heights of capitals and of a small x. */
  readonly ascent: number;
  readonly descent: number;
  readonly capHeight: number;
  readonly xHeight: number;
  /** True where the face has a glyph for the code point. */
  readonly has: (codePoint: number) => boolean;
  /** The glyph for one code point with its own advance (from hmtx), no shaping; undefined where the face has none. */
  readonly glyphFor: (codePoint: number) => MeasuredGlyph | undefined;
  /** A text shaped with kerning and features. Throws RangeError on a character without a glyph. */
  readonly shape: (
    text: string,
    features?: readonly Feature[],
  ) => readonly MeasuredGlyph[];
  /** The font file, for embedding. */
  readonly bytes: Uint8Array;
}

/**
 * The faces that a package is set in, opened when first asked for. Text faces are `text`,
 * `text-italic`, `text-semibold`, `text-semibold-italic`, `text-bold`; equation faces carry
 * the names of their files, `KaTeX_Main-Regular` and so on.
 */
export interface FontBook {
  /** The face of that name. Throws RangeError on a name that there is none of. */
  readonly face: (name: string) => Face;
}
