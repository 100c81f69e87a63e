/**
 * Lays out an equation as a drawing.
 *
 * @module
 */
export { createTypesetter } from './typesetter.ts';
export type { Typesetter } from './typesetter.ts';
export type { TypesetOptions } from './set-equation.ts';
export type { EquationStyle } from './finish-drawing.ts';
export { TypesetFault } from './typeset-fault.ts';
