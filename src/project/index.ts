/**
 * Reads a project folder into checked definitions.
 *
 * ```
 * files ──readYaml──▶ Tree ──shapes──▶ what each file says ──readBeam, checkLoads …──▶ definitions
 *                     texts with places   right forms          names looked up, cases spread
 *                                                                     │ idealise
 *                                                                     ▼
 *                                                              BeamStructure (SI)
 * ```
 *
 * Scalars stay text until the shape of their key says what they are, so none of YAML's guesses can
 * change a value. A shape (`shape/`) is the one description of a place in a file: it reads and
 * reports with the place, and it gives the JSON Schema for editors. Every reader reports and goes
 * on; what could not be read is left aside, so that one mistake is reported once and does not hide
 * the next. Mistakes inside a member's file carry its mark and stop that member alone.
 *
 * @module
 */
export { readProject } from './read-project.ts';
export type * from './definitions.ts';
export { naturalOrder } from './folder/natural-order.ts';
export { loadPath } from './load-path.ts';
export type { LoadPath } from './load-path.ts';
export { idealise } from './idealise/idealise.ts';
export { spansOf } from './idealise/spans-of.ts';
export type { BeamSpan } from './idealise/spans-of.ts';
export type { Idealised, LoadView } from './idealise/idealise.ts';
export { greatestComponents } from './idealise/idealise-carried-range.ts';
export type { CarriedComponents, LeftBehind } from './idealise/idealise-carried.ts';
export { readSum } from './read-sum.ts';
export { schemaFor } from './schema-for.ts';
export { fileKinds } from './kinds/file-kinds.ts';
export type { FileKind, FileKindName } from './kinds/file-kinds.ts';
export type { JsonSchema, Shape } from './shape/shape.ts';
