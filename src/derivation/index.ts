/**
 * Narrates a solution, step by step.
 *
 * ```
 * BeamWork ──symbolsOf──▶ letters for every unknown and load
 *     │ runChecks, combinationAdds
 *     │                    on the numbers of every case and combination; one that is false stops the sheet
 *     ▼
 * narrators                one a kind of step: given, supports, determinacy, equations (loads prepared,
 *     │                    sums in solving order), reasonableness, internal forces, combinations, results
 *     │ displacements/       E I v″ in singularity functions, integrated twice; virtual work at the extremes
 *     │ judgeLimits          deflections from the chords of their spans against the limits stated
 *     ▼
 * Section[] of Step        facts with equations as trees; not a sentence in them
 *     │ reworkable         every printed equality worked again from its printed figures
 *     ▼
 * BeamDerivation
 * ```
 *
 * A case whose loads may stand in several ways is narrated as it is placed; then `withArrangements` works
 * every choice alone and adds up, and from there on the member is judged on `ranges`, never on the state.
 *
 * A narrator decides what is said and in which order, a template how it is worded. The solver's
 * numbers and the equations narrated here meet only in the values of the unknowns; the checks then
 * work the same structure by other sums.
 *
 * @module
 */
export { deriveBeam } from './derive.ts';
export type { DeriveOutcome } from './derive.ts';
export type { BeamWork } from './beam-work.ts';
export { workMembers } from './work-members.ts';
export type { MemberWork } from './work-members.ts';
export { deriveMembers } from './derive-members.ts';
export type { DerivedMember } from './derive-members.ts';
export type { BeamDerivation, Section, Summary } from './derivation.ts';
export type {
  CautionStep,
  CheckFact,
  CombinationStep,
  DisplacementStep,
  EquationStep,
  EntryRow,
  FigureStep,
  Found,
  GivenStep,
  InternalStep,
  LimitRow,
  LimitStep,
  LoadRow,
  OriginFact,
  Place,
  ReasonStep,
  ResultLine,
  ResultStep,
  SegmentFact,
  Sense,
  StaticsStep,
  Step,
  SupportRow,
  UnknownRow,
} from './steps.ts';
export type {
  HandMethod,
  MethodChoice,
  MethodReason,
} from './redundants/choose-method.ts';
export { groupEntries } from './entry-groups.ts';
export type { EntryGroup, EntryName } from './entry-groups.ts';
export { closeProject, closureFaults } from './load-path/close-project.ts';
export type {
  CaseSum,
  CaseValues,
  PlacedValues,
  ProjectClosure,
} from './load-path/project-closure.ts';
export type { JudgedLimit } from './limits/judge-limits.ts';
export { placeWords } from './place-words.ts';
export { runChecks } from './sense-checks/run-checks.ts';
export type { CheckOutcome } from './sense-checks/check-outcome.ts';
export { componentEnds, componentsOf } from './narrators/reaction-components.ts';
export { choiceNames } from './arrangements/choice-names.ts';
export type { ChoiceName, ChoiceNames } from './arrangements/choice-names.ts';
