/**
 * What differs between two projects and their results.
 *
 * ```
 * Project, Project ── compareInputs ───┐   by meaning: points and loads are matched, never lines of a file
 * Results, Results ── compareResults ──┼── compare ──▶ Comparison
 * both, load paths ── reachOf ─────────┘   whose sheets a change reaches, through carried reactions too
 * ```
 *
 * Order of keys, comments and spellings of one number (8 kip, 8000 lb) are no change. A load is the
 * same load where its case, kind and place agree; where one of these differs and nothing else fits
 * better, it was moved or changed, not removed and added. A comparison is facts: the words are those
 * of who prints it.
 *
 * @module
 */
export { compare, isAlike } from './compare.ts';
export { comparisonJson } from './comparison-json.ts';
export type { ComparedSide } from './reach-of.ts';
export type {
  CheckChange,
  ComparedFigure,
  ComparedPackage,
  Comparison,
  InputChange,
  InputPart,
  OutcomeChange,
  Reach,
  ResultChange,
} from './comparison.ts';
