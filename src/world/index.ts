/**
 * Everything outside the program: files, fonts on disk, today's date.
 *
 * @module
 */
export type { ReadAnswer, World, WriteAnswer } from './world.ts';
export { digest } from './digest.ts';
