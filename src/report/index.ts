/**
 * Arranges derivations as a document of blocks.
 *
 * @module
 */
export type {
  Block,
  Cell,
  ColumnAlign,
  Inline,
  Part,
  Report,
  Row,
  RunningFoot,
  TextStyle,
} from './blocks.ts';
