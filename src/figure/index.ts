/**
 * Draws structures and their diagrams.
 *
 * A figure is put together from strips. A strip is a band with one axis (a member, the base line
 * of a row of loads, the base line of a diagram) at y = 0: first its parts are drawn on a board,
 * which remembers what is where; then all labels are placed at once; then the strip is closed and
 * set above or below the others, so that a figure grows in height as its content needs and never
 * in width.
 *
 * ```
 * FigureSpec
 *    │  framePictures     one scale of stations, one of magnitudes, margins, a gutter
 *    ▼
 * BeamPicture ──layPicture──▶ strips: the member, and a row above it for every further case and
 *    │                        for loads that would cover others
 *    │  settleLabels      near what they name, or ranked outside it with leaders
 *    ▼
 * Strip ──withDimensions, layDiagram, layAxes …──▶ Strip
 *    │  finishFigure
 *    ▼
 * LaidFigure            a Drawing, with the boxes of its labels and of all that they must not hide
 * ```
 *
 * Every part knows the boxes that it covers, so that nothing drawn can be forgotten when labels are
 * placed. Loads have filled heads, reactions open ones; the accent is only on reactions and
 * extremes, and nothing is told by colour alone.
 *
 * @module
 */
export type {
  BeamPicture,
  ConventionKind,
  Diagram,
  FigureSpec,
  KeyValue,
  Label,
  PictureLoad,
  PictureReaction,
  PictureSupport,
} from './figure-spec.ts';
export { drawFigure, layOutFigure } from './draw-figure.ts';
export type { FigureOptions } from './draw-figure.ts';
export type { FigureSetting } from './figure-setting.ts';
export type { LaidFigure } from './finish-figure.ts';
export type { Box } from './geometry/box.ts';
export { labelSetter } from './labels/set-label.ts';
export type { LabelStyle, SetLabel } from './labels/set-label.ts';
