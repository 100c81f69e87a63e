import type { CodeEntry } from './code-entry.ts';
import { programCodes, type ProgramCode } from './codes/program.ts';
import { staticsCodes, type StaticsCode } from './codes/statics.ts';

/** The name of a diagnostic: kebab-case words, stable from version to version. */
export type Code = StaticsCode | ProgramCode;

/** Every code that the program can report, by its name; grouped by the room that reports it. */
export const codes: Readonly<Record<Code, CodeEntry>> = {
  ...staticsCodes,
  ...programCodes,
};
