import type { CodeEntry } from '../code-entry.ts';

/** Codes of members that cannot be solved. */
export type StaticsCode =
  | 'unstable'
  | 'depends-on-unsolved'
  | 'needs-stiffness'
  | 'not-supported'
  | 'check-failed';

/** Their entries. */
export const staticsCodes: Readonly<Record<StaticsCode, CodeEntry>> = {
  unstable: {
    meaning: 'The supports cannot hold the member against every movement in its plane.',
    mend: 'Add or turn a support, or take out a hinge, so that no movement is left free; the message names the free one.',
    example: {
      wrong: 'supports: { A: roller, B: roller }',
      right: 'supports: { A: pin, B: roller }',
    },
  },
  'depends-on-unsolved': {
    meaning: 'The member carries a reaction of a member that could not be solved.',
    mend: 'Mend the member that the message names; this one is then solved as well.',
  },
  'not-supported': {
    meaning: 'The definition asks for something that the program does not work yet.',
    mend: 'Take it out, or work that part by hand and enter its effect as loads.',
  },
  'needs-stiffness': {
    meaning:
      'An indeterminate member with springs, settlements or temperature shares its forces by stiffness, and E or I is missing.',
    mend: 'Give `section` (with I) and `material` (with E) to the member.',
    example: {
      wrong: 'supports: { A: fixed, B: { type: roller, settlement: 5 mm } }',
      right: 'section: W12x26\nmaterial: { E: 29000 ksi }',
    },
  },
  'check-failed': {
    meaning:
      'A check that must hold for every right answer came out false, so no result is given.',
    mend: 'This points at a fault of the program or of hand-changed values; report it with the definition file.',
  },
};
