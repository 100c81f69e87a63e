import type { CodeEntry } from '../code-entry.ts';

/** Codes of mistakes in project.yaml and loads.yaml. */
export type ProjectCode =
  | 'same-person'
  | 'id-taken'
  | 'listed-twice'
  | 'not-a-limit'
  | 'unknown-entry'
  | 'unknown-case'
  | 'combination-mark-taken'
  | 'combination-set';

/** Their entries. */
export const projectCodes: Readonly<Record<ProjectCode, CodeEntry>> = {
  'same-person': {
    meaning: 'One person both prepares and checks.',
    mend: 'Name somebody else as checker, or leave the checker out until there is one.',
    example: {
      wrong:
        'prepared: { name: A. Quill, initials: AQ }\nchecked: { name: A. Quill, initials: AQ }',
      right:
        'prepared: { name: A. Quill, initials: AQ }\nchecked: { name: R. Tamsin, initials: RT }',
    },
  },
  'id-taken': {
    meaning: 'Two assumptions or references have one id.',
    mend: 'Give one of them another id.',
    example: {
      wrong: '- { id: A1, text: Dry site. }\n- { id: A1, text: Level site. }',
      right: '- { id: A1, text: Dry site. }\n- { id: A2, text: Level site. }',
    },
  },
  'listed-twice': {
    meaning: 'A list names something twice.',
    mend: 'List it once.',
    example: { wrong: 'sheet_order: [ B1, G1, B1 ]', right: 'sheet_order: [ B1, G1 ]' },
  },
  'not-a-limit': {
    meaning: 'A deflection limit is neither a share of the span nor a length.',
    mend: 'Write L/360 or a length.',
    example: { wrong: 'L: 1/360', right: 'L: L/360' },
  },
  'unknown-entry': {
    meaning:
      'A deflection limit is for something that is no case, combination or sum of cases.',
    mend: 'Write cases with a + between, factors before them.',
    example: {
      wrong: 'deflection_limits: { D & L: L/240 }',
      right: 'deflection_limits: { D+L: L/240 }',
    },
  },
  'unknown-case': {
    meaning: 'A load case is named that loads.yaml does not list.',
    mend: 'Mend the mark, or list the case.',
    example: {
      wrong: '- { case: LL, point: 3 kip, at: B }',
      right: '- { case: L, point: 3 kip, at: B }',
    },
  },
  'combination-mark-taken': {
    meaning: 'A combination has the mark of another combination or of a case.',
    mend: 'Give it another mark.',
    example: {
      wrong: '- { mark: D, factors: { D: 1.4 } }',
      right: '- { mark: "1.4D", factors: { D: 1.4 } }',
    },
  },
  'combination-set': {
    meaning: 'A named set of combinations cannot be worked out.',
    mend: 'The message says what is in the way: the kinds or categories of the cases, an edition, a national value.',
  },
};
