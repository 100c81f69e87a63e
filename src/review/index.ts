/**
 * Checks somebody else's worked steps.
 *
 * ```
 * WorkedDefinition (project)              BeamWork (derivation): structure and results
 *      │ readLine                              │ termsOfCutSum (statics)
 *      ▼                                       ▼
 * WrittenLine, every part with its place   the atoms of the sum: unknowns with their arms, loads
 *      │ linearForm, termsOfLine               in pieces, each with what it adds
 *      ▼                                       │
 * signed terms: a number, or so much of an unknown
 *      └──────────────┬────────────────────────┘
 *                     ▼ matchTerms
 *          the cheapest set of slips that explains the line: exact terms cost nothing,
 *          whole, split or lumped; a turned sign costs less than a wrong arm, that less than a
 *          term too few or too many
 *                     ▼ markStep
 *          right, wrong, follows, unread; findings in words; the right line
 * ```
 *
 * A line that holds for the true values, up to a factor, is right however it is written; only one
 * that does not is searched for slips. What a step concludes is judged twice: against the truth,
 * and against what follows from the worker's own figures, so that one slip is marked once.
 *
 * @module
 */
export { checkJson } from './check-json.ts';
export { checkWorked } from './check-worked.ts';
export { summarise } from './summarise.ts';
export type { GroupSummary, SlipCount, WorkSummary } from './summarise.ts';
export type { Comment, MarkedFile, MarkedStep, MarkSummary } from './marked.ts';
export type { Finding, FindingKind, Verdict } from './verdict.ts';
export type {
  DirectionWord,
  Extent,
  ReadLine,
  ReadingFault,
  Written,
  WrittenLine,
} from './reading/written.ts';
