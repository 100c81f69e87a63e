import type { CodeEntry } from '../code-entry.ts';

/** Codes of faults that lie outside the definition files. */
export type ProgramCode =
  'worked-left-out' | 'write-failed' | 'template-fault' | 'set-otherwise';

/** Their entries. */
export const programCodes: Readonly<Record<ProgramCode, CodeEntry>> = {
  'write-failed': {
    meaning: 'A file could not be written where it was asked for.',
    mend: 'Choose another place with -o, or free the space or the permission that the message names.',
  },
  'template-fault': {
    meaning:
      'A template of the package cannot be read or filled, or gives markup that is not well formed.',
    mend: 'Correct the template that the message names; taking it out of report-templates/ brings the program’s own back.',
  },
  'set-otherwise': {
    meaning:
      'Something in the package could not be set on its sheet as it was asked for.',
    mend: 'Look at the place that the message names; write it shorter or with other characters.',
  },
  'worked-left-out': {
    meaning:
      'Check prints of worked steps are bound while a package is preliminary or for review; this one is past that.',
    mend: 'Nothing, or mark the steps by `sumzero check`.',
  },
};
