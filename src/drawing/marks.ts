/** A colour as red, green, blue, each 0 to 1. */
export type Colour = readonly [red: number, green: number, blue: number];

/**
 * One step of a path. `M` begins at a point, `L` draws a line to one, `C` a cubic Bézier curve
 * by two control points to an end point, `Z` closes. Numbers are points (1/72 in), x to the
 * right, y DOWN, from the origin of the drawing that holds the mark.
 */
export type PathStep =
  | readonly ['M', number, number]
  | readonly ['L', number, number]
  | readonly ['C', number, number, number, number, number, number]
  | readonly ['Z'];

/** A stroke: its width in points, and dash lengths (on, off, …) in points, none for a full line. */
export interface Stroke {
  readonly width: number;
  readonly colour: Colour;
  readonly dash?: readonly number[];
  /** Line ends; default `butt`. */
  readonly cap?: 'butt' | 'round' | 'square';
  /** Line corners; default `miter`. */
  readonly join?: 'miter' | 'round' | 'bevel';
}

/** One glyph of a run: its number in the font, its offset from the run's start in points, and the text that it stands for. */
export interface PlacedGlyph {
  readonly id: number;
  readonly x: number;
  readonly text: string;
}

/** A run of glyphs of one face on one baseline, starting at (x, y). */
export interface GlyphsMark {
  readonly kind: 'glyphs';
  readonly x: number;
  /** The baseline. */
  readonly y: number;
  /** Name of the face in the font book. */
  readonly face: string;
  /** Size of the em in points. */
  readonly size: number;
  readonly colour: Colour;
  readonly glyphs: readonly PlacedGlyph[];
}

/** A path, filled, stroked or both. */
export interface ShapeMark {
  readonly kind: 'shape';
  readonly path: readonly PathStep[];
  readonly fill?: Colour;
  readonly stroke?: Stroke;
}

/** A picture from the project folder, scaled into a rectangle. */
export interface ImageMark {
  readonly kind: 'image';
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
  /** Path in the project folder; the bytes travel beside the document. */
  readonly source: string;
}

/** A rectangle that leads somewhere when clicked: an anchor's name, or a web address. */
export interface LinkMark {
  readonly kind: 'link';
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
  readonly to: { readonly anchor: string } | { readonly address: string };
  /** What a reader is told about the link (its Contents). */
  readonly says: string;
}

/** A place that links can lead to. */
export interface AnchorMark {
  readonly kind: 'anchor';
  readonly y: number;
  readonly name: string;
}

/**
 * Marks moved together by (x, y), and what they mean together: `element` is the number of the
 * structure element (see PagedDocument) that they are part of, `artifact` says that they are
 * no part of the text (running foot, rules), `actualText` is the text that they stand for where
 * the glyphs alone do not tell (an equation), in linear form.
 */
export interface GroupMark {
  readonly kind: 'group';
  readonly x: number;
  readonly y: number;
  readonly marks: readonly Mark[];
  readonly element?: number;
  readonly artifact?: 'pagination' | 'layout';
  readonly actualText?: string;
  /** Marks are cut off outside this rectangle, in the group's own coordinates. */
  readonly clip?: {
    readonly x: number;
    readonly y: number;
    readonly width: number;
    readonly height: number;
  };
}

/** Everything that can stand on a page. Told apart by `kind`. */
export type Mark =
  GlyphsMark | ShapeMark | ImageMark | LinkMark | AnchorMark | GroupMark;
