import type { CodeEntry } from '../code-entry.ts';

/** Codes of reactions that one member carries for another. */
export type CarriedCode = 'not-a-reaction' | 'unknown-member' | 'not-a-support';

/** Their entries. */
export const carriedCodes: Readonly<Record<CarriedCode, CodeEntry>> = {
  'not-a-reaction': {
    meaning: 'A carried reaction does not name a member and one of its supports.',
    mend: 'Write mark, dot, point: B2.C.',
    example: {
      wrong: '- { reaction: B2, at: B }',
      right: '- { reaction: B2.C, at: B }',
    },
  },
  'unknown-member': {
    meaning: 'A member is named that the project does not have.',
    mend: 'Mend the mark, or add the member.',
    example: {
      wrong: '- { reaction: B22.C, at: B }',
      right: '- { reaction: B2.C, at: B }',
    },
  },
  'not-a-support': {
    meaning: 'A reaction is carried from a point where that member has no support.',
    mend: 'Name one of its supports.',
    example: {
      wrong: '- { reaction: B2.B, at: B }',
      right: '- { reaction: B2.C, at: B }',
    },
  },
};
