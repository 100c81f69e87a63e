/**
 * Arranges derivations as a document of blocks.
 *
 * ```
 * ReportInput ──facts──▶ templates (Handlebars) ──XHTML──▶ saxes ──elements──▶ blocks
 * ```
 *
 * Facts are in code, words in `report-templates/`, one file a part of the package and one a kind of
 * step. Templates emit a small subset of HTML and place what is no text (equations, drawings, lines
 * of a file) by reference through helpers. Markup that is not well formed is reported, never
 * repaired.
 *
 * @module
 */
export { concerning, markOf, unknownMarks } from './asked-for.ts';
export { faultyMembers } from './member-outcomes.ts';
export { pictureFaults } from './picture-faults.ts';
export { setOtherwise } from './set-otherwise.ts';
export { composePackage } from './compose-package.ts';
export type { Composed, PackageOptions } from './compose-package.ts';
export { packageResults } from './package-results.ts';
export type { ResultsOptions } from './package-results.ts';
export { openSuperseded } from './revision/open-superseded.ts';
export type { WorkedMembers } from './worked-members.ts';
export type {
  LoadPathEdge,
  MemberReport,
  ReactionRow,
  ReactionTable,
  ReportInput,
} from './report-input.ts';
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
