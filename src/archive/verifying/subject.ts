import type { World } from '../../world/index.ts';

/** The program that works an archive again. */
export interface PresentProgram {
  readonly name: string;
  readonly version: string;
}

/** One file to be verified, and what it is verified with. */
export interface Subject {
  readonly world: World;
  readonly path: string;
  /** SHA-256 of the whole file. */
  readonly sha256: string;
  readonly program: PresentProgram;
}
