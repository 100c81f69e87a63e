import type { CodeEntry } from '../code-entry.ts';

/** Codes of mistakes in the loads of a member. */
export type LoadCode =
  | 'case-missing'
  | 'factor-without-reason'
  | 'reason-without-factor'
  | 'factor-for-absent-case'
  | 'couple-at-hinge'
  | 'side-without-hinge'
  | 'unknown-area'
  | 'unknown-id'
  | 'self-weight-unknown'
  | 'rise-on-a-beam'
  | 'spacing-count'
  | 'spacing-backwards'
  | 'too-many-variable-spacings'
  | 'factor-for-absent-lane';

/** Their entries. */
export const loadCodes: Readonly<Record<LoadCode, CodeEntry>> = {
  'case-missing': {
    meaning: 'A load does not say its case, and the project has several.',
    mend: 'Add `case`.',
    example: {
      wrong: '- { point: 3 kip, at: B }',
      right: '- { case: L, point: 3 kip, at: B }',
    },
  },
  'factor-without-reason': {
    meaning: 'A load has a factor without the reason for it.',
    mend: 'Add `because`.',
    example: {
      wrong: '- { area: deck, width: 8 ft, times: 0.82 }',
      right:
        '- { area: deck, width: 8 ft, times: 0.82, because: "reduction, ASCE 7-22 4.7.2" }',
    },
  },
  'reason-without-factor': {
    meaning: 'A reason for a factor stands without a factor.',
    mend: 'Add `times`, or write it as `note`.',
    example: {
      wrong: '- { case: L, point: 3 kip, at: B, because: plant }',
      right: '- { case: L, point: 3 kip, at: B, note: plant }',
    },
  },
  'factor-for-absent-case': {
    meaning: 'A factor is for a case that the load does not have.',
    mend: 'Take it out, or give the load that case.',
    example: {
      wrong: '- { uniform: { D: 1 klf }, times: { L: 0.8 }, because: office rule }',
      right: '- { uniform: { L: 1 klf }, times: { L: 0.8 }, because: office rule }',
    },
  },
  'couple-at-hinge': {
    meaning:
      'A couple stands exactly at a hinge and does not say which piece takes it.',
    mend: 'Add `side: left` or `side: right`.',
    example: {
      wrong: 'hinges: [ C ]\nloads: [ { couple: 9 kip ft, at: C, turn: clockwise } ]',
      right:
        'hinges: [ C ]\nloads: [ { couple: 9 kip ft, at: C, turn: clockwise, side: left } ]',
    },
  },
  'side-without-hinge': {
    meaning: '`side` stands where there is no hinge.',
    mend: 'Take it out.',
    example: {
      wrong: '- { couple: 9 kip ft, at: 2 ft, turn: clockwise, side: left }',
      right: '- { couple: 9 kip ft, at: 2 ft, turn: clockwise }',
    },
  },
  'unknown-area': {
    meaning: 'An area load is named that loads.yaml does not have.',
    mend: 'Mend the name, or add it to `areas`.',
    example: {
      wrong: '- { area: dekc, width: 8 ft }',
      right: '- { area: deck, width: 8 ft }',
    },
  },
  'unknown-id': {
    meaning: 'A load or member leans on an id that project.yaml does not have.',
    mend: 'Mend the id, or add the assumption or reference.',
    example: { wrong: 'uses: [ A7 ]', right: 'uses: [ A1 ]' },
  },
  'self-weight-unknown': {
    meaning: 'The own weight of the beam cannot be worked out.',
    mend: 'Give the cross-section its weight, or its area and the material its density.',
    example: {
      wrong: 'self_weight: D\nsection: { I: 204 in^4 }',
      right: 'self_weight: D\nsection: { I: 204 in^4, weight: 26 plf }',
    },
  },
  'rise-on-a-beam': {
    meaning:
      'A mean rise of temperature is given for a beam, whose length is taken as fixed.',
    mend: 'Take it out, or write the member as a frame, which feels its lengthening.',
    example: {
      wrong: '- { case: T, temperature: { rise: 30 K } }',
      right: '- { case: T, temperature: { difference: 20 K, depth: 400 mm } }',
    },
  },
  'spacing-count': {
    meaning: 'A train has not one spacing fewer than axles.',
    mend: 'Give the distance from each axle to the next.',
    example: {
      wrong: '- { case: L, axles: [ 8 kip, 32 kip, 32 kip ], spacing: [ 14 ft ] }',
      right:
        '- { case: L, axles: [ 8 kip, 32 kip, 32 kip ], spacing: [ 14 ft, 14 ft ] }',
    },
  },
  'spacing-backwards': {
    meaning: 'The least of a variable spacing is more than its greatest.',
    mend: 'Write the lesser first.',
    example: {
      wrong: '- { case: L, axles: [ 8 kip, 32 kip ], spacing: [ 30 ft to 14 ft ] }',
      right: '- { case: L, axles: [ 8 kip, 32 kip ], spacing: [ 14 ft to 30 ft ] }',
    },
  },
  'too-many-variable-spacings': {
    meaning: 'More spacings of a train vary than can be tried out together.',
    mend: 'Fix some of them, and write a line for each train that follows.',
    example: {
      wrong:
        '- { axles: [ 2 kip, 2 kip, 2 kip, 2 kip, 2 kip, 2 kip ], spacing: [ 4 ft to 8 ft, 4 ft to 8 ft, 4 ft to 8 ft, 4 ft to 8 ft, 4 ft to 8 ft ] }',
      right:
        '- { axles: [ 2 kip, 2 kip, 2 kip, 2 kip, 2 kip, 2 kip ], spacing: [ 4 ft to 8 ft, 4 ft, 4 ft to 8 ft, 4 ft, 4 ft to 8 ft ] }',
    },
  },
  'factor-for-absent-lane': {
    meaning: 'A factor is for a lane load that the train does not have.',
    mend: 'Add `lane`, or take the factor out.',
    example: {
      wrong: '- { axles: [ 8 kip ], times: { lane: 1.2 }, because: office rule }',
      right: '- { axles: [ 8 kip ], times: { axles: 1.2 }, because: office rule }',
    },
  },
};
