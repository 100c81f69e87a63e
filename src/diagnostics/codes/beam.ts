import type { CodeEntry } from '../code-entry.ts';

/** Codes of mistakes in the definition of a beam. */
export type BeamCode =
  | 'mark-taken'
  | 'too-few-points'
  | 'no-point-before'
  | 'points-out-of-order'
  | 'points-coincide'
  | 'reads-two-ways'
  | 'unknown-point'
  | 'not-a-place'
  | 'unknown-span'
  | 'off-the-member'
  | 'no-length'
  | 'runs-backwards'
  | 'no-supports'
  | 'settlement-without-hold'
  | 'case-without-load'
  | 'hinge-at-end'
  | 'hinge-at-fixed-support'
  | 'hinge-twice'
  | 'unknown-section'
  | 'unknown-material'
  | 'section-gap'
  | 'sections-overlap';

/** Their entries. */
export const beamCodes: Readonly<Record<BeamCode, CodeEntry>> = {
  'mark-taken': {
    meaning: 'Two members have one mark.',
    mend: 'Give one of them another mark.',
  },
  'too-few-points': {
    meaning: 'A beam has fewer than two points.',
    mend: 'Name its two ends at least.',
    example: { wrong: 'points: { A: 0 ft }', right: 'points: { A: 0 ft, B: 20 ft }' },
  },
  'no-point-before': {
    meaning: 'The first point counts from a point before it.',
    mend: 'Give the first point a station of its own.',
    example: {
      wrong: 'points: { A: +4 ft, B: 6 ft }',
      right: 'points: { A: 0 ft, B: 6 ft }',
    },
  },
  'points-out-of-order': {
    meaning: 'A point stands left of the one before it in the list.',
    mend: 'List the points from left to right.',
    example: {
      wrong: 'points: { A: 0 ft, B: 9 ft, C: 6 ft }',
      right: 'points: { A: 0 ft, C: 6 ft, B: 9 ft }',
    },
  },
  'points-coincide': {
    meaning: 'Two points stand at one station.',
    mend: 'Keep one of them.',
    example: {
      wrong: 'points: { A: 0 ft, B: 12 ft, C: 144 in }',
      right: 'points: { A: 0 ft, B: 12 ft }',
    },
  },
  'reads-two-ways': {
    meaning: 'A name or a span can be read in two ways.',
    mend: 'Rename the point, or write `from` and `to`.',
    example: {
      wrong:
        'points: { A: 0 ft, A-B: 3 ft, B: 6 ft, B-C: 9 ft, C: 12 ft }\nloads: [ { uniform: 1 klf, span: A-B-C } ]',
      right: 'loads: [ { uniform: 1 klf, from: A-B, to: C } ]',
    },
  },
  'unknown-point': {
    meaning: 'A point is named that the member does not have.',
    mend: 'Mend the name, or add the point.',
    example: {
      wrong: 'supports: { A: pin, D: roller }',
      right: 'supports: { A: pin, C: roller }',
    },
  },
  'not-a-place': {
    meaning: 'A place is neither the name of a point nor a station.',
    mend: 'Write the name of a point, or a length along the axis.',
    example: { wrong: 'at: 6 fet', right: 'at: 6 ft' },
  },
  'unknown-span': {
    meaning: 'A span does not name two points with a dash between.',
    mend: 'Write two points of the beam, as in A-C.',
    example: { wrong: 'span: A to C', right: 'span: A-C' },
  },
  'off-the-member': {
    meaning: 'A place lies beyond the ends of the beam.',
    mend: 'Give a station on the beam, or lengthen the beam.',
    example: {
      wrong: 'points: { A: 0 ft, B: 6 ft }\nloads: [ { point: 1 kip, at: 7 ft } ]',
      right: 'points: { A: 0 ft, B: 6 ft }\nloads: [ { point: 1 kip, at: 5 ft } ]',
    },
  },
  'no-length': {
    meaning: 'Something that has a length begins and ends at one place.',
    mend: 'Give it a length; a force at one place is a point load.',
    example: {
      wrong: '- { uniform: 1 klf, from: A, to: A }',
      right: '- { uniform: 1 klf, from: A, to: B }',
    },
  },
  'runs-backwards': {
    meaning: 'Something ends left of where it begins.',
    mend: 'Name its left end first.',
    example: {
      wrong: '- { uniform: 1 klf, from: B, to: A }',
      right: '- { uniform: 1 klf, from: A, to: B }',
    },
  },
  'no-supports': {
    meaning: 'A beam has no support.',
    mend: 'Say what holds it.',
    example: { wrong: 'supports: { }', right: 'supports: { A: pin, B: roller }' },
  },
  'settlement-without-hold': {
    meaning: 'A settlement is given for a support that holds nothing in y.',
    mend: 'Take it out, or give the spring its `stiffness`.',
    example: {
      wrong: 'B: { type: spring, rotation: 900 kip ft/rad, settlement: 1 in }',
      right: 'B: { type: spring, stiffness: 40 kip/in, settlement: 1 in }',
    },
  },
  'case-without-load': {
    meaning: 'A case is given where nothing belongs to it.',
    mend: 'Add what belongs to it, or take it out.',
    example: {
      wrong: 'B: { type: roller, case: T }',
      right: 'B: { type: roller, settlement: 0.5 in, case: T }',
    },
  },
  'hinge-at-end': {
    meaning:
      'A hinge stands at an end of the beam, where nothing is left for it to free.',
    mend: 'Take it out.',
    example: {
      wrong: 'points: { A: 0 ft, B: 20 ft }\nhinges: [ B ]',
      right: 'hinges: [ ]',
    },
  },
  'hinge-at-fixed-support': {
    meaning: 'A hinge stands at a support that holds rotation.',
    mend: 'Make the support a pin or a roller, or take the hinge out.',
    example: {
      wrong: 'supports: { A: fixed }\nhinges: [ A ]',
      right: 'supports: { A: pin }',
    },
  },
  'hinge-twice': {
    meaning: 'A hinge is listed twice.',
    mend: 'List it once.',
    example: { wrong: 'hinges: [ B, B ]', right: 'hinges: [ B ]' },
  },
  'unknown-section': {
    meaning:
      'A cross-section is named that neither the project nor the built-in tables have.',
    mend: 'Give its A, I and S, or add it under `sections` in project.yaml.',
    example: {
      wrong: 'section: W99x9',
      right: 'section: { A: 7.65 in^2, I: 204 in^4, S: 33.4 in^3 }',
    },
  },
  'unknown-material': {
    meaning:
      'A material is named that neither the project nor the built-in tables have.',
    mend: 'Give its E and density, or add it under `materials` in project.yaml.',
    example: {
      wrong: 'material: unobtainium',
      right: 'material: { E: 29000 ksi, density: 490 pcf }',
    },
  },
  'section-gap': {
    meaning: 'A stretch of the beam has no cross-section.',
    mend: 'Let the stretches cover the beam from end to end.',
    example: {
      wrong: 'sections: [ { from: A, to: B, section: W12x26 } ]   # the beam ends at C',
      right: 'sections: [ { from: A, to: C, section: W12x26 } ]',
    },
  },
  'sections-overlap': {
    meaning: 'Two stretches of cross-sections cover one place.',
    mend: 'Begin each stretch where the one before ends.',
  },
};
