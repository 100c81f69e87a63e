import type { CodeEntry } from '../code-entry.ts';

/** Codes of faults that lie outside the definition files. */
export type ProgramCode = 'write-failed';

/** Their entries. */
export const programCodes: Readonly<Record<ProgramCode, CodeEntry>> = {
  'write-failed': {
    meaning: 'A file could not be written where it was asked for.',
    mend: 'Choose another place with -o, or free the space or the permission that the message names.',
  },
};
