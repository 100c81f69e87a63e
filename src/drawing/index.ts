/**
 * Finished drawings: marks at fixed places.
 *
 * The noun that joins layout to the page: an equation, a figure, a line of text and a whole page
 * are all a Drawing, and six kinds of mark are enough for every one of them.
 *
 * @module
 */
export type { Drawing } from './drawing.ts';
export type {
  AnchorMark,
  Colour,
  GlyphsMark,
  GroupMark,
  ImageMark,
  LinkMark,
  Mark,
  PathStep,
  PlacedGlyph,
  ShapeMark,
  Stroke,
} from './marks.ts';
export { describeDrawing } from './describe-drawing.ts';
export { scaleDrawing } from './scale-drawing.ts';
