/**
 * What published standards ask: combinations, materials, cross-sections, limit states.
 *
 * A standard's clause is data here, with its number beside it, and one function works all clauses
 * of a kind. Combinations: an ASCE 7 clause is a list of summands, each one kind of load or
 * several joined by "or"; an expression of EN 1990 is what it multiplies permanent, leading and
 * accompanying actions by. Both are worked out for the cases that a project really has:
 *
 *     cases, alternatives ──▶ clause by clause ──▶ choices at each "or" ──▶ cases that may act
 *     together ──▶ marks ──▶ equal sums merged, every clause kept
 *
 * Cross-sections and materials are tables, each row with its source; a value that was written down
 * without the source at hand says `from memory` there. Nothing here knows a project's files: cases
 * and requests come in as narrow values of the room's own, and what must be said in the package
 * (assumptions, cautions, cases left out, mistakes) goes out as sentences beside the result.
 *
 * @module
 */
export type { Combination } from './combination.ts';
export type { CaseKind, CombinationCase } from './combination-case.ts';
export { combinationsFor } from './combinations/combinations-for.ts';
export type {
  CombinationDefinition,
  CombinationRequest,
} from './combinations/combinations-for.ts';
export { namedCombinations } from './combinations/named-combinations.ts';
export { namedSetNames } from './combinations/named-sets.ts';
export type {
  CombinationContext,
  CombinationList,
  CombinationProblem,
  NamedSetName,
  NamedSetRequest,
  SetNote,
  UntakenCase,
} from './combinations/named-set.ts';
export { noCombinations } from './combinations/named-set.ts';
export type { CustomRequest } from './combinations/custom-combination.ts';
export { mergeCombinations } from './combinations/merge-combinations.ts';
export { sameTerms } from './combinations/factored-case.ts';
export type { FactoredCase } from './combinations/factored-case.ts';
export { nationalValueNames } from './combinations/en1990-values.ts';
export {
  crossSectionNames,
  findCrossSection,
} from './cross-sections/find-cross-section.ts';
export type { Plates, TabulatedCrossSection } from './cross-sections/cross-section.ts';
export { findMaterial, materialNames } from './materials/find-material.ts';
export type { TabulatedMaterial } from './materials/material.ts';
