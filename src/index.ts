/**
 * Structural calculation packages that a stranger can check with a pencil.
 *
 * @module
 */
export { bindProject, composePackage, markOf, resultsOf, workProject } from './pipeline.ts';
export type { BindOptions, Bound, Stage, WorkedProject } from './pipeline.ts';
export { readResults } from './results/index.ts';
