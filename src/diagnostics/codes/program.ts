import type { CodeEntry } from '../code-entry.ts';

/** Codes of faults that lie outside the definition files. */
export type ProgramCode =
  | 'changes-unknown'
  | 'date-left-over'
  | 'worked-left-out'
  | 'write-failed'
  | 'template-fault'
  | 'set-otherwise';

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
      'Check prints of worked steps are bound with the sheets while a package is preliminary or for review; this one is past that, and they are a PDF of their own.',
    mend: 'Keep check-prints.pdf beside the package; `sumzero archive` does.',
  },
  'changes-unknown': {
    meaning:
      'The package names the bag of the one that it supersedes, and what changed since then cannot be told: the bag is not there, is not as it was issued, or holds another package. A package without its changes could be taken for one that has none, so that this stops it unless it is preliminary.',
    mend: 'Write the path of the right bag, from the project folder on; or take `bag` out of `supersedes`, and the package says nothing of changes.',
    example: {
      wrong: 'supersedes: { number: "2031-014", revision: A, bag: package.pdf }',
      right:
        'supersedes: { number: "2031-014", revision: A, bag: issued/2031-014-A.zip }',
    },
  },
  'date-left-over': {
    meaning:
      'A date beside a person is not later than the revision before, or stood there already when that one was issued. Initials print only where the date is one for the present revision, so that the box stays open.',
    mend: 'Write the date on which the person signed this revision, or take the date out until somebody has.',
    example: {
      wrong:
        'people: { checked: { name: R. Tamsin, initials: RT, date: 2031-03-14 } }\nrevisions: [ { mark: A, date: 2031-03-14 }, { mark: B, date: 2031-05-02 } ]',
      right:
        'people: { checked: { name: R. Tamsin, initials: RT, date: 2031-05-02 } }\nrevisions: [ { mark: A, date: 2031-03-14 }, { mark: B, date: 2031-05-02 } ]',
    },
  },
};
