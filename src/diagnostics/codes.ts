import { staticsCodes } from './codes/statics.ts';
import { programCodes } from './codes/program.ts';

/** What a code stands for, as `explain CODE` prints it. */
export interface CodeEntry {
  /** What is wrong, in one sentence. */
  readonly meaning: string;
  /** How to mend it, in one or two sentences. */
  readonly mend: string;
  /** A small faulty snippet and its mended twin; absent where no file shows the mistake. */
  readonly example?: { readonly wrong: string; readonly right: string };
}

/** Every code that the program can report, by its name; grouped by the room that reports it. */
export const codes = {
  ...staticsCodes,
  ...programCodes,
} satisfies Record<string, CodeEntry>;

/** The name of a diagnostic: kebab-case words, stable from version to version. */
export type Code = keyof typeof codes;
