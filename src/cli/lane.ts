import type { Verification } from '../index.ts';
import type { Call } from './command.ts';

/** What came of one bag: what was found, or how the program itself failed on it. */
export type Verified =
  | { readonly path: string; readonly verification: Verification }
  | { readonly path: string; readonly failure: string };

/** Something that verifies one bag after another. Never throws: a failure is answered. */
export interface Lane {
  readonly verify: (path: string) => Promise<Verified>;
  /** Ends it; no bag is under way then. */
  readonly end: () => Promise<void>;
}

/** A lane in this very thread. */
export function laneHere({ world, program }: Pick<Call, 'world' | 'program'>): Lane {
  return {
    verify: async (path) => {
      try {
        const { verify } = await import('../index.ts');
        return { path, verification: await verify(world, path, program) };
      } catch (failure) {
        return { path, failure: failureOf(failure) };
      }
    },
    end: () => Promise.resolve(),
  };
}

/** What was thrown, in words, with its stack where it has one. */
export function failureOf(failure: unknown): string {
  return failure instanceof Error
    ? (failure.stack ?? failure.message)
    : String(failure);
}
