/**
 * Structural calculation packages that a stranger can check with a pencil.
 *
 * @module
 */
export { bindProject, resultsOf, workProject } from './pipeline.ts';
export type { BindOptions, Bound, Stage, WorkedProject } from './pipeline.ts';
export { composePackage, concerning, markOf, unknownMarks } from './report/index.ts';
export { checkJson, checkWorked, summarise } from './review/index.ts';
export type {
  GroupSummary,
  MarkedFile,
  MarkedStep,
  SlipCount,
  WorkSummary,
} from './review/index.ts';
export { compare, comparisonJson, isAlike } from './comparison/index.ts';
export type {
  CheckChange,
  ComparedFigure,
  ComparedPackage,
  ComparedSide,
  Comparison,
  InputChange,
  Reach,
  ResultChange,
} from './comparison/index.ts';
export { writePlain } from './plain/index.ts';
export { readResults, writeResults } from './results/index.ts';
export type {
  BeamResults,
  EntryResults,
  MemberResults,
  ProjectError,
  ProjectErrors,
  RangeEntryResults,
  Results,
  ResultsReading,
} from './results/index.ts';
export { fileKinds, schemaFor } from './project/index.ts';
export type { FileKindName, JsonSchema } from './project/index.ts';
export { formatNumber, formatRatio } from './units/index.ts';
export {
  archiveProject,
  keepBag,
  openPackage,
  register,
  registerCsv,
  registerJson,
  bagsBelow,
  verify,
} from './archive/index.ts';
export type {
  Archived,
  ArchiveOptions,
  ArchiveRecord,
  OpenedPackage,
  Register,
  RegisteredPerson,
  RegisterRow,
  Difference,
  Verification,
} from './archive/index.ts';
