/**
 * Everything outside the program: files, fonts on disk, today's date.
 *
 * The compiler is a pure function of a `World`: it asks for bytes by path and is answered at once,
 * by a value, also when the disk refuses. `diskWorld` is the machine; `memoryWorld` is made of the
 * files it is given. A file is written beside its target and renamed, so that an interrupted run
 * leaves the old one whole.
 *
 * @module
 */
export type { OpenAnswer, OpenFile, ReadAnswer, World, WriteAnswer } from './world.ts';
export { diskWorld } from './disk-world.ts';
export { memoryWorld } from './memory-world.ts';
export type { MemoryWorld } from './memory-world.ts';
export { rememberReads } from './remember-reads.ts';
export type { RememberedFile, RememberedReads } from './remember-reads.ts';
export { digest, startDigest } from './digest.ts';
export type { Digesting } from './digest.ts';
export { checksum } from './checksum.ts';
export { fixedTime } from './fixed-time.ts';
export { piecesBetween, readableOf } from './readable-of.ts';
