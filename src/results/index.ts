/**
 * Every figure of the package as data: writes and reads results.json.
 *
 * `collectResults` turns solutions in SI into one plain value in the project's display units;
 * `writeResults` makes that value text, always the same text for the same value; `readResults`
 * reads such a text back, holding every field against the shape of the format, so that what is
 * compared or archived later is known to be whole:
 *
 *     ResultsInput ──collectResults──▶ Results ──writeResults──▶ text ──readResults──▶ Results
 *
 * The shape stands in one place as data (`results-shape`), the types beside it (`results`); a
 * field is added to both.
 *
 * @module
 */
export { collectResults } from './collect-results.ts';
export { writeResults } from './write-results.ts';
export { readResults } from './read-results.ts';
export type { ResultsReading } from './read-results.ts';
export { misfitsOf } from './shape.ts';
export type { Misfit, Shape } from './shape.ts';
export * as shapes from './plain-shapes.ts';
export type {
  ChoiceInput,
  EntryInput,
  EntryUse,
  CheckInput,
  MemberInput,
  ResultsInput,
  SolvedBeamInput,
  UnsolvedMemberInput,
} from './results-input.ts';
export type {
  ArrangementFigures,
  BeamResults,
  CheckFigures,
  ClosureFigures,
  EndsFigures,
  EntryResults,
  EnvelopeFigures,
  ExtremeFigure,
  ExtremeFigures,
  Figure,
  GoverningFigure,
  MemberError,
  MemberResults,
  ProjectError,
  ProjectErrors,
  ProjectIdentity,
  RangeEntryResults,
  RangeExtremeFigures,
  RangeStationFigures,
  ReactionFigures,
  Results,
  StaticsFigures,
  StationFigures,
  UnsolvedMember,
} from './results.ts';
