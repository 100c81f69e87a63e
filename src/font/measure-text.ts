import type { PlacedGlyph } from '../drawing/index.ts';
import type { Face, Feature, MeasuredGlyph } from './font-book.ts';

/** A text set in one face and measured. */
export interface MeasuredText {
  /** Sum of the advances, points. */
  readonly width: number;
  /** The glyphs, each at its distance from the start, points. */
  readonly glyphs: readonly PlacedGlyph[];
}

/**
 * Shapes a text in one face at a size (points) and places its glyphs one after the other.
 * Throws RangeError on a character that the face has no glyph for: see missingCharacters.
 */
export function measureText(
  face: Face,
  size: number,
  text: string,
  features: readonly Feature[] = [],
): MeasuredText {
  return placeGlyphs(face.shape(text, features), size);
}

/** Places shaped glyphs one after the other; advances in ems become offsets in points. */
export function placeGlyphs(
  shaped: readonly MeasuredGlyph[],
  size: number,
): MeasuredText {
  let width = 0;
  const glyphs = shaped.map(({ id, advance, text }) => {
    const placed = { id, x: width, text };
    width += advance * size;
    return placed;
  });
  return { width, glyphs };
}
