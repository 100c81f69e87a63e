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
