/**
 * Draws structures and their diagrams.
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
