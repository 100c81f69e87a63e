import type { CodeEntry } from '../code-entry.ts';

/** Codes of remarks: things that are legal and seldom meant. They stop nothing. */
export type RemarkCode =
  | 'load-zero'
  | 'load-negative'
  | 'load-upward'
  | 'point-unused'
  | 'case-unused'
  | 'alternative-unused'
  | 'assumption-unused'
  | 'reference-unused'
  | 'picture-unused'
  | 'carried-with-factor'
  | 'relieving-kept'
  | 'successor-unnamed'
  | 'successor-unheeded';

/** Their entries. */
export const remarkCodes: Readonly<Record<RemarkCode, CodeEntry>> = {
  'load-zero': {
    meaning: 'A load is 0.',
    mend: 'Take it out unless it holds a place.',
    example: {
      wrong: '- { case: L, point: 0 kip, at: B }',
      right: '- { case: L, point: 3 kip, at: B }',
    },
  },
  'load-negative': {
    meaning:
      'A load is negative, so that it acts against the direction or turn that it names.',
    mend: 'Name the direction in which it acts.',
    example: {
      wrong: '- { case: W, uniform: -0.2 klf }',
      right: '- { case: W, uniform: 0.2 klf, direction: up }',
    },
  },
  'load-upward': {
    meaning: 'A load has a part that acts upward.',
    mend: 'Leave it if that is meant.',
  },
  'point-unused': {
    meaning: 'Nothing stands at a point.',
    mend: 'Leave it if the diagrams should name it.',
  },
  'case-unused': {
    meaning: 'No member carries a load of a case.',
    mend: 'Leave it if that is meant; its results are 0.',
  },
  'alternative-unused': {
    meaning: 'A group of alternatives names a case that is not listed.',
    mend: 'Mend the mark, or leave it for a case that is still to come.',
    example: {
      wrong: 'alternatives: [ [ W1, W22 ] ]',
      right: 'alternatives: [ [ W1, W2 ] ]',
    },
  },
  'assumption-unused': {
    meaning: 'No member says that it leans on an assumption.',
    mend: 'Name it with `uses` where it counts.',
  },
  'reference-unused': {
    meaning: 'No member says that it leans on a reference.',
    mend: 'Name it with `uses` where it counts.',
  },
  'picture-unused': {
    meaning: 'Nothing places a picture of the folder.',
    mend: 'Take it away, or leave it for later sheets.',
  },
  'carried-with-factor': {
    meaning:
      'A carried reaction comes from loads that carry a factor, and is carried on with it.',
    mend: 'See whether the factor holds for this member too.',
  },
  'relieving-kept': {
    meaning:
      'A train does not say whether axles that reduce the effect sought count; they are kept.',
    mend: 'Say `relieving: kept` or `relieving: left out`.',
    example: {
      wrong: '- { axles: [ 8 kip, 32 kip ], spacing: [ 14 ft ] }',
      right: '- { axles: [ 8 kip, 32 kip ], spacing: [ 14 ft ], relieving: kept }',
    },
  },
  'successor-unnamed': {
    meaning: 'The package is superseded and does not say by what.',
    mend: 'Name the package that replaces it, beside the status.',
    example: {
      wrong: 'status: superseded',
      right:
        'status: superseded\nsuperseded_by: { number: "2031-014", revision: B, date: 2031-05-02 }',
    },
  },
  'successor-unheeded': {
    meaning:
      'The file names a package that replaces this one, and the status says otherwise.',
    mend: 'Make the status superseded, or take superseded_by out.',
    example: {
      wrong: 'status: issued\nsuperseded_by: { revision: B }',
      right: 'status: superseded\nsuperseded_by: { revision: B }',
    },
  },
};
