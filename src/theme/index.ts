/**
 * Sizes, weights and colours that a firm may change.
 *
 * @module
 */
export type { Theme } from './theme.ts';
export { defaultTheme } from './default-theme.ts';
export { layOver } from './lay-over.ts';
