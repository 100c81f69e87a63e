import type { CodeEntry } from '../code-entry.ts';

/** Codes of values that do not have the form that their key asks for. */
export type FormCode =
  | 'unknown-key'
  | 'missing-key'
  | 'keys-together'
  | 'empty-value'
  | 'wrong-shape'
  | 'wrong-count'
  | 'not-one-of'
  | 'not-a-date'
  | 'bad-name'
  | 'number-out-of-range'
  | 'not-positive'
  | 'not-a-quantity'
  | 'unit-missing'
  | 'unit-unknown'
  | 'unit-misfit';

/** Their entries. */
export const formCodes: Readonly<Record<FormCode, CodeEntry>> = {
  'unknown-key': {
    meaning: 'A key is not known where it stands.',
    mend: 'Mend its spelling, move it, or take it out; the hint names the nearest known key.',
    example: { wrong: 'titel: Deck stringer', right: 'title: Deck stringer' },
  },
  'missing-key': {
    meaning: 'A key that must be there is left out.',
    mend: 'Add it; the hint says what it holds.',
    example: {
      wrong: '- { case: L, couple: 9 kip ft, at: B }',
      right: '- { case: L, couple: 9 kip ft, at: B, turn: clockwise }',
    },
  },
  'keys-together': {
    meaning: 'Two keys stand side by side that say the same thing in two ways.',
    mend: 'Keep one of them.',
    example: {
      wrong: '- { case: D, uniform: 1 kip/ft, span: A-C, to: B }',
      right: '- { case: D, uniform: 1 kip/ft, span: A-C }',
    },
  },
  'empty-value': {
    meaning: 'A key has no value.',
    mend: 'Give it one, or take the key out.',
    example: { wrong: 'title:', right: 'title: Deck stringer' },
  },
  'wrong-shape': {
    meaning: 'A list, a map or a text stands where another of the three belongs.',
    mend: 'Write what the message asks for.',
    example: { wrong: 'points: [ 0 ft, 6 ft ]', right: 'points: { A: 0 ft, B: 6 ft }' },
  },
  'wrong-count': {
    meaning: 'A list holds too many or too few items.',
    mend: 'Give as many as the message asks for.',
    example: {
      wrong: 'varying: [ 0 kip/ft ]',
      right: 'varying: [ 0 kip/ft, 0.6 kip/ft ]',
    },
  },
  'not-one-of': {
    meaning: 'A word is none of those that the key knows.',
    mend: 'Write one of the words that the message lists.',
    example: { wrong: 'supports: { A: pinned }', right: 'supports: { A: pin }' },
  },
  'not-a-date': {
    meaning:
      'A date is not written as year-month-day, or the calendar has no such day.',
    mend: 'Write it as 2031-03-14.',
    example: { wrong: 'date: 14/3/2031', right: 'date: 2031-03-14' },
  },
  'bad-name': {
    meaning: 'A name holds a sign that names may not hold.',
    mend: 'Leave out dots, dashes, spaces and other punctuation as the hint says.',
    example: { wrong: 'mark: B.1', right: 'mark: B1' },
  },
  'number-out-of-range': {
    meaning: 'A number is outside of what can be meant here.',
    mend: 'Look for a slip in the number or its unit.',
    example: { wrong: 'figures: 40', right: 'figures: 4' },
  },
  'not-positive': {
    meaning: 'A number is 0 or negative where it cannot be.',
    mend: 'Give a size greater than 0.',
    example: { wrong: 'section: { I: -204 in^4 }', right: 'section: { I: 204 in^4 }' },
  },
  'not-a-quantity': {
    meaning: 'A text is no number with a unit.',
    mend: 'Write a number, a space and a unit.',
    example: { wrong: 'B: six ft', right: 'B: 6 ft' },
  },
  'unit-missing': {
    meaning: 'A number stands without its unit.',
    mend: 'Add the unit; the hint names those that fit.',
    example: { wrong: 'B: 6', right: 'B: 6 ft' },
  },
  'unit-unknown': {
    meaning: 'A unit is not known.',
    mend: 'Write one of the units that the hint names.',
    example: { wrong: 'B: 6 foots', right: 'B: 6 ft' },
  },
  'unit-misfit': {
    meaning: 'A unit is known and measures something else than belongs here.',
    mend: 'Write a unit of the right kind; the hint names those that fit.',
    example: { wrong: 'B: 6 kip', right: 'B: 6 ft' },
  },
};
