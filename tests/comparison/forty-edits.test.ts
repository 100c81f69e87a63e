import { describe, expect, test } from 'vitest';
import { compareInputs } from '../../src/comparison/inputs/compare-inputs.ts';
import type { InputChange, InputPart } from '../../src/comparison/index.ts';
import {
  demoFiles,
  edited,
  projectOf,
  type Edit,
  type Files,
} from '../support/demo-edit.ts';

type Told = readonly [
  kind: InputChange['kind'],
  where: InputPart | `members ${string}`,
  what: string,
  from?: string,
  to?: string,
];

interface Case {
  readonly title: string;
  readonly edits: readonly Edit[];
  readonly told: readonly Told[];
}

/** A change in a line: part (with the mark after `members`), phrase, values; `''` where a value is absent. */
function told({ kind, part, member, what, from, to }: InputChange): Told {
  const where = member === undefined ? part : (`members ${member}` as const);
  if (from === undefined && to === undefined) return [kind, where, what];
  return [kind, where, what, from ?? '', to ?? ''];
}

const boathouse = demoFiles('tarn-boathouse');
const depot = demoFiles('quarry-road-depot');

const boathouseEdits: readonly Case[] = [
  {
    title: 'a force',
    edits: [['members/D1.yaml', 'point: 5 kN', 'point: 6.5 kN']],
    told: [['changed', 'members D1', 'load Q on D1 at B', '5 kN', '6.5 kN']],
  },
  {
    title: 'a force moved to a station',
    edits: [['members/J1.yaml', 'at: 8.5 m', 'at: 9 m']],
    told: [['moved', 'members J1', 'load Q of 3.5 kN on J1', '8.5 m', '9 m']],
  },
  {
    title: 'the one of two equal forces that moved',
    edits: [['members/R1.yaml', '[ 2.6 m, 5.1 m ]', '[ 2.6 m, 5.4 m ]']],
    told: [['moved', 'members R1', 'load Q of 6 kN on R1', '5.1 m', '5.4 m']],
  },
  {
    title: 'the case of a force',
    edits: [['members/M1.yaml', 'case: Q, point: 4 kN', 'case: W, point: 4 kN']],
    told: [['changed', 'members M1', 'case of the load on M1 at 4.5 m', 'Q', 'W']],
  },
  {
    title: 'the direction of a force',
    edits: [['members/M1.yaml', '215 deg', '225 deg']],
    told: [
      ['changed', 'members M1', 'direction of load W on M1 at 2 m', '215°', '225°'],
    ],
  },
  {
    title: 'size and place of a force that keeps its note',
    edits: [['members/M1.yaml', 'point: 4 kN, at: 4.5 m', 'point: 5 kN, at: 4.2 m']],
    told: [
      ['moved', 'members M1', 'load Q of 5 kN on M1', '4.5 m', '4.2 m'],
      ['changed', 'members M1', 'load Q on M1 at 4.2 m', '4 kN', '5 kN'],
    ],
  },
  {
    title: 'a force added',
    edits: [
      [
        'members/L1.yaml',
        'self_weight: G',
        '  - { case: Q, point: 1 kN, at: 1 m }\nself_weight: G',
      ],
    ],
    told: [['added', 'members L1', 'load Q on L1 at 1 m', '', '1 kN']],
  },
  {
    title: 'a force removed',
    edits: [
      [
        'members/J1.yaml',
        '  - { case: Q, point: 3.5 kN, at: 8.5 m, note: Boat crane }\n',
        '',
      ],
    ],
    told: [['removed', 'members J1', 'load Q on J1 at 8.5 m', '3.5 kN', '']],
  },
  {
    title: 'one varying load made uniform',
    edits: [['members/L1.yaml', 'varying: [ 0 kN/m, 1.5 kN/m ]', 'uniform: 1.5 kN/m']],
    told: [
      [
        'changed',
        'members L1',
        'load W on L1 from A to B',
        '0 kN/m to 1.5 kN/m',
        '1.5 kN/m',
      ],
    ],
  },
  {
    title: 'the stretch of a uniform load',
    edits: [['members/F1.yaml', 'from: D, to: E', 'from: C, to: E']],
    told: [['moved', 'members F1', 'load G of 0.5 kN/m on F1', 'D to E', 'C to E']],
  },
  {
    title: 'the turn of a couple',
    edits: [['members/G1.yaml', 'turn: clockwise', 'turn: counterclockwise']],
    told: [
      [
        'changed',
        'members G1',
        'turn of couple Q on G1 at C',
        'clockwise',
        'counterclockwise',
      ],
    ],
  },
  {
    title: 'the side of a couple at a hinge',
    edits: [['members/J1.yaml', 'side: right', 'side: left']],
    told: [['changed', 'members J1', 'side of couple Q on J1 at E', 'right', 'left']],
  },
  {
    title: 'a tributary width, once for all cases of the area load',
    edits: [['members/F1.yaml', 'width: 2.1 m', 'width: 2.4 m']],
    told: [
      [
        'changed',
        'members F1',
        'width of area load floor on F1 over its whole length',
        '2.1 m',
        '2.4 m',
      ],
    ],
  },
  {
    title: 'an area load, once and not at every member that has it',
    edits: [
      ['loads.yaml', 'floor: { G: 1.1 kPa, Q: 4 kPa', 'floor: { G: 1.1 kPa, Q: 5 kPa'],
    ],
    told: [['changed', 'areas', 'area load floor in case Q', '4 kPa', '5 kPa']],
  },
  {
    title: 'the grounds and the note of a load',
    edits: [
      ['members/B1.yaml', 'note: Bay, uses: A2', 'note: East bay, uses: [ A2, R1 ]'],
    ],
    told: [
      [
        'changed',
        'members B1',
        'note on area load floor on B1 over its whole length',
        'Bay',
        'East bay',
      ],
      [
        'changed',
        'members B1',
        'grounds of area load floor on B1 over its whole length',
        'A2',
        'A2, R1',
      ],
    ],
  },
  {
    title: 'a carried reaction moved',
    edits: [['members/G1.yaml', '[ 2.4 m, 4.8 m ]', '[ 2.4 m, 5 m ]']],
    told: [['moved', 'members G1', 'reaction B1.B carried by G1', '4.8 m', '5 m']],
  },
  {
    title: 'a difference of temperature',
    edits: [['members/P1.yaml', 'difference: 15 K', 'difference: 18 K']],
    told: [
      [
        'changed',
        'members P1',
        'difference of temperature T on P1 over its whole length',
        '15 K',
        '18 K',
      ],
    ],
  },
  {
    title: 'axles, their spacing and their factor',
    edits: [
      [
        'members/K1.yaml',
        '[ 9 kN, 9 kN ], spacing: [ 1.6 m ]',
        '[ 9 kN, 10 kN ], spacing: [ 1.6 m to 2 m ]',
      ],
      ['members/K1.yaml', 'axles: 1.15', 'axles: 1.2'],
    ],
    told: [
      ['changed', 'members K1', 'axles H on K1', '9 kN, 9 kN', '9 kN, 10 kN'],
      ['changed', 'members K1', 'spacing of axles H on K1', '1.6 m', '1.6 m to 2 m'],
      ['changed', 'members K1', 'factor on axles of axles H on K1', '1.15', '1.2'],
    ],
  },
  {
    title: 'a point moved, and no load that stands at it',
    edits: [['members/L1.yaml', 'C: 4.2 m', 'C: 4.4 m']],
    told: [['moved', 'members L1', 'point C of L1', '4.2 m', '4.4 m']],
  },
  {
    title: 'a point renamed, with all that speak of it',
    edits: [
      ['members/B1.yaml', 'B: 5.4 m', 'E: 5.4 m'],
      ['members/B1.yaml', 'B: { type: spring', 'E: { type: spring'],
      ['members/G1.yaml', 'B1.B', 'B1.E'],
    ],
    told: [['renamed', 'members B1', 'point B of B1', 'B', 'E']],
  },
  {
    title:
      'a point put in between that takes over a name, and no support or load at the old one',
    edits: [
      ['members/D1.yaml', 'B: 2.5 m', 'B: 1 m, C: 2.5 m'],
      ['members/D1.yaml', 'point: 5 kN, at: B', 'point: 5 kN, at: C'],
      ['members/D1.yaml', 'couple: 2 kN m, at: B', 'couple: 2 kN m, at: C'],
      ['members/L1.yaml', 'B: 3.6 m, C: 4.2 m', 'B: 2 m, C: 3.6 m, E: 4.2 m'],
      ['members/L1.yaml', 'B: roller', 'C: roller'],
      ['members/L1.yaml', 'from: A, to: B', 'from: A, to: C'],
      ['members/L1.yaml', 'point: 2 kN, at: C', 'point: 2 kN, at: E'],
    ],
    told: [
      ['moved', 'members D1', 'point B of D1', '2.5 m', '1 m'],
      ['added', 'members D1', 'point C of D1', '', '2.5 m'],
      ['renamed', 'members L1', 'point B of L1', 'B', 'C'],
      ['renamed', 'members L1', 'point C of L1', 'C', 'E'],
      ['added', 'members L1', 'point B of L1', '', '2 m'],
    ],
  },
  {
    title: 'a support of another kind',
    edits: [['members/L1.yaml', 'A: guide', 'A: pin']],
    told: [['changed', 'members L1', 'support at A of L1', 'guide', 'pin']],
  },
  {
    title: 'the stiffness of a spring',
    edits: [['members/B1.yaml', '35 kN/mm', '30 kN/mm']],
    told: [
      [
        'changed',
        'members B1',
        'stiffness of the support at B of B1',
        '35 kN/mm',
        '30 kN/mm',
      ],
    ],
  },
  {
    title: 'a settlement',
    edits: [['members/P1.yaml', 'settlement: 6 mm', 'settlement: 8 mm']],
    told: [
      ['changed', 'members P1', 'settlement of the support at B of P1', '6 mm', '8 mm'],
    ],
  },
  {
    title: 'the direction of a roller',
    edits: [['members/R1.yaml', 'normal: 110 deg', 'normal: 100 deg']],
    told: [
      ['changed', 'members R1', 'direction of the support at B of R1', '110°', '100°'],
    ],
  },
  {
    title: 'a hinge moved to another point',
    edits: [
      ['members/J1.yaml', 'hinges: [ E, F ]', 'hinges: [ E, D2 ]'],
      ['members/J1.yaml', 'C: 12 m, D: 17 m', 'C: 12 m, D2: 13.5 m, D: 17 m'],
    ],
    told: [
      ['added', 'members J1', 'point D2 of J1', '', '13.5 m'],
      ['moved', 'members J1', 'hinge of J1', 'F', 'D2'],
    ],
  },
  {
    title: 'the section of a prismatic member',
    edits: [['members/D1.yaml', 'section: HEB200', 'section: HEB220']],
    told: [['changed', 'members D1', 'section of D1', 'HEB200', 'HEB220']],
  },
  {
    title: 'the section of one stretch, and where it begins',
    edits: [
      ['members/K1.yaml', 'section: IPE300', 'section: IPE330'],
      ['members/K1.yaml', 'S: 4.2 m, B', 'S: 4.2 m, R: 4.8 m, B'],
      ['members/K1.yaml', 'from: A, to: S', 'from: A, to: R'],
      ['members/K1.yaml', 'from: S, to: U', 'from: R, to: U'],
    ],
    told: [
      ['added', 'members K1', 'point R of K1', '', '4.8 m'],
      ['moved', 'members K1', 'change of section of K1', 'S', 'R'],
      ['changed', 'members K1', 'section of K1 from R to U', 'IPE300', 'IPE330'],
    ],
  },
  {
    title: 'values in place of a section by name',
    edits: [
      [
        'members/G1.yaml',
        'section: HEA300',
        'section: { I: 182.6e6 mm^4, weight: 0.87 kN/m }',
      ],
    ],
    told: [
      [
        'changed',
        'members G1',
        'section of G1',
        'HEA300',
        'I 182.6×10⁶ mm⁴, weight 0.87 kN/m',
      ],
    ],
  },
  {
    title: 'a material',
    edits: [['members/R1.yaml', 'S235', 'S355']],
    told: [['changed', 'members R1', 'material of R1', 'S235', 'S355']],
  },
  {
    title: 'the case of the self-weight, left out',
    edits: [['members/M1.yaml', 'self_weight: G\n', '']],
    told: [['removed', 'members M1', 'case of the self-weight of M1', 'G', '']],
  },
  {
    title: 'a deflection limit of a member and one of the project',
    edits: [
      ['members/K1.yaml', 'H: L/600', 'H: L/750'],
      ['project.yaml', 'Q: L/300', 'Q: L/350'],
    ],
    told: [
      ['changed', 'criteria', 'deflection limit Q', 'L/300', 'L/350'],
      ['changed', 'members K1', 'deflection limit H of K1', 'L/600', 'L/750'],
    ],
  },
  {
    title: 'a member with another mark, and no reference to it',
    edits: [
      ['members/B1.yaml', 'mark: B1', 'mark: B4'],
      ['members/G1.yaml', 'B1.B', 'B4.B'],
    ],
    told: [['renamed', 'members B4', 'member B1', 'B1', 'B4']],
  },
  {
    title: 'a case with another mark, and no place that names it',
    edits: [
      ['loads.yaml', '  Z: { title', '  Y: { title'],
      ['loads.yaml', 'factors: { G: 1, Z: 1 }', 'factors: { G: 1, Y: 1 }'],
      ['members/J1.yaml', 'case: Z', 'case: Y'],
      ['members/P1.yaml', 'case: Z', 'case: Y'],
    ],
    told: [['renamed', 'cases', 'case Z', 'Z', 'Y']],
  },
  {
    title: 'pattern loading and category of a case',
    edits: [['loads.yaml', 'category: C, pattern: true', 'category: B']],
    told: [
      ['changed', 'cases', 'pattern loading of case Q', 'yes', 'no'],
      ['changed', 'cases', 'category of case Q', 'C', 'B'],
    ],
  },
  {
    title: 'a factor of a combination, and an alternative that is gone',
    edits: [
      ['loads.yaml', 'factors: { G: 1, Z: 1 }', 'factors: { G: 1, Z: 0.8 }'],
      ['loads.yaml', 'alternatives: [ [ H, W ] ]', ''],
    ],
    told: [
      ['changed', 'combinations', 'factor of Z in combination G + Z', '1', '0.8'],
      ['removed', 'combinations', 'cases H and W never together'],
    ],
  },
  {
    title: 'a named set left out',
    edits: [['loads.yaml', '  - en1990-sls\n', '']],
    told: [['removed', 'combinations', 'combinations en1990-sls']],
  },
  {
    title: 'an assumption confirmed',
    edits: [['project.yaml', 'confirmed: false', 'confirmed: true']],
    told: [['changed', 'assumptions', 'confirmation of assumption A1', 'no', 'yes']],
  },
  {
    title: 'a person and a revision',
    edits: [
      [
        'project.yaml',
        'name: M. Tarrant, initials: MT, date: 2031-09-12',
        'name: L. Vos, initials: LV',
      ],
      [
        'project.yaml',
        'sheets: all }',
        'sheets: all }\n  - { mark: A, date: 2031-10-01, note: Gallery, prepared: EH }',
      ],
    ],
    told: [
      ['changed', 'people', 'person who checked the package', 'M. Tarrant', 'L. Vos'],
      [
        'changed',
        'people',
        'initials of the person who checked the package',
        'MT',
        'LV',
      ],
      [
        'removed',
        'people',
        'date of the person who checked the package',
        '2031-09-12',
        '',
      ],
      ['added', 'revisions', 'revision A', '', '2031-10-01, Gallery'],
    ],
  },
  {
    title: 'a caution reworded and a standard of another year',
    edits: [
      ['project.yaml', 'every morning of frost', 'every evening of frost'],
      ['project.yaml', 'EN 1991-1-3:2003', 'EN 1991-1-3:2025'],
    ],
    told: [
      ['changed', 'criteria', 'standard', 'EN 1991-1-3:2003', 'EN 1991-1-3:2025'],
      [
        'changed',
        'cautions',
        'caution',
        'Ice on the tarn may lift the jetty; it is broken up by hand every morning of frost.',
        'Ice on the tarn may lift the jetty; it is broken up by hand every evening of frost.',
      ],
    ],
  },
  {
    title: 'worked steps, by their file',
    edits: [['worked/r1-boat-trolley.yaml', 'member: R1', 'member: R1\nloads: all']],
    told: [['changed', 'worked', 'worked steps worked/r1-boat-trolley.yaml']],
  },
];

const depotEdits: readonly Case[] = [
  {
    title: 'a relative point, by its station and with what follows from it',
    edits: [['members/B1.yaml', 'U: 7 ft 6 in', 'U: 7 ft']],
    told: [
      ['moved', 'members B1', 'point U of B1', '7 ft 6 in', '7 ft'],
      ['moved', 'members B1', 'point V of B1', '12 ft 6 in', '12 ft 0 in'],
    ],
  },
  {
    title: 'a point renamed that is braced and carried at',
    edits: [
      ['members/G1.yaml', 'C: +5 ft 6 in', 'D: +5 ft 6 in'],
      ['members/G1.yaml', 'at: [ "5", C ]', 'at: [ "5", D ]'],
      ['members/G1.yaml', 'top: [ "3", "5", C ]', 'top: [ "3", "5", D ]'],
    ],
    told: [['renamed', 'members G1', 'point C of G1', 'C', 'D']],
  },
  {
    title: 'a factor on a load and its reason',
    edits: [
      [
        'members/K1.yaml',
        'times: 1.2, because: "impact of light machinery, ASCE 7-22 4.6.3"',
        'times: 1.33, because: "impact by the maker, R2"',
      ],
    ],
    told: [
      ['changed', 'members K1', 'factor on load L on K1 at T', '1.2', '1.33'],
      [
        'changed',
        'members K1',
        'reason for the factor on load L on K1 at T',
        'impact of light machinery, ASCE 7-22 4.6.3',
        'impact by the maker, R2',
      ],
    ],
  },
  {
    title: 'one case of a load that stands in two',
    edits: [['members/H1.yaml', 'L: 1.9 kip', 'L: 2.1 kip']],
    told: [
      ['changed', 'members H1', 'load L on H1 at 3 ft 6 in', '1.9 kip', '2.1 kip'],
      ['changed', 'members H1', 'load L on H1 at 7 ft 6 in', '1.9 kip', '2.1 kip'],
    ],
  },
  {
    title: 'the source of a carried reaction',
    edits: [['members/L1.yaml', 'G1.3', 'G1.5']],
    told: [
      [
        'changed',
        'members L1',
        'source of the reaction carried by L1 at G',
        'G1.3',
        'G1.5',
      ],
    ],
  },
  {
    title: 'a section of the project, once and not at its users',
    edits: [['project.yaml', 'I: 1313 in^4', 'I: 1340 in^4']],
    told: [
      ['changed', 'sections', 'I of section W18x50 plated', '1313 in⁴', '1340 in⁴'],
    ],
  },
  {
    title: 'a material renamed, and not at its user',
    edits: [
      ['project.yaml', 'concrete: {', 'normal concrete: {'],
      ['members/L1.yaml', 'material: concrete', 'material: normal concrete'],
    ],
    told: [
      ['renamed', 'materials', 'material concrete', 'concrete', 'normal concrete'],
    ],
  },
  {
    title: 'a design load and how lengths print',
    edits: [
      ['project.yaml', 'value: 43 psf', 'value: 50 psf'],
      ['project.yaml', 'lengths: feet-inches', 'lengths: decimal'],
    ],
    told: [
      ['changed', 'conventions', 'manner of lengths', 'feet-inches', 'decimal'],
      ['changed', 'criteria', 'design load Ground snow', '43 psf', '50 psf'],
    ],
  },
  {
    title: 'the order of the sheets',
    edits: [['project.yaml', '[ B1, G2, J1', '[ G2, B1, J1']],
    told: [
      [
        'changed',
        'members',
        'order of the sheets',
        'B1, G2, J1, J2, H1, T1, G1, L1, F1, P1, C1, K1, K2',
        'G2, B1, J1, J2, H1, T1, G1, L1, F1, P1, C1, K1, K2',
      ],
    ],
  },
  {
    title: 'title, place, number and bracing of a member',
    edits: [
      ['members/C1.yaml', 'title: Canopy outrigger', 'title: Outrigger of the canopy'],
      ['members/C1.yaml', 'drawing: S-203', 'drawing: S-204'],
      ['members/C1.yaml', 'count: 4', 'count: 5'],
      ['members/C1.yaml', 'top: continuous', 'top: [ A, C ]'],
    ],
    told: [
      [
        'changed',
        'members C1',
        'title of C1',
        'Canopy outrigger',
        'Outrigger of the canopy',
      ],
      ['changed', 'members C1', 'drawing of C1', 'S-203', 'S-204'],
      ['changed', 'members C1', 'number of members like C1', '4', '5'],
      ['changed', 'members C1', 'bracing at the top of C1', 'continuous', 'A, C'],
    ],
  },
  {
    title: 'an assumption with another id, and not at the members that lean on it',
    edits: [
      ['project.yaml', '{ id: A2, text: The rooftop', '{ id: A3, text: The rooftop'],
      ['members/B1.yaml', 'uses: A2', 'uses: A3'],
    ],
    told: [['renamed', 'assumptions', 'assumption A2', 'A2', 'A3']],
  },
  {
    title: 'an area load renamed and changed at a member',
    edits: [
      ['loads.yaml', '  canopy:    {', '  entrance:    {'],
      [
        'members/C1.yaml',
        'area: canopy, width: [ 8 ft, 5 ft ]',
        'area: entrance, width: [ 8 ft, 6 ft ]',
      ],
    ],
    told: [
      ['renamed', 'areas', 'area load canopy', 'canopy', 'entrance'],
      [
        'changed',
        'members C1',
        'width of area load entrance on C1 from B to C',
        '8 ft to 5 ft',
        '8 ft to 6 ft',
      ],
    ],
  },
];

/** Edits that change nothing, by what they do. */
const silent: readonly (readonly [
  title: string,
  files: Files,
  edits: readonly Edit[],
])[] = [
  [
    'a comment added and one removed',
    depot,
    [
      ['members/L1.yaml', '             # from the area and the density', ''],
      ['members/K1.yaml', 'supports:', '# welded all round\nsupports:'],
      [
        'project.yaml',
        '            # printed as given, whether they govern or not',
        '',
      ],
    ],
  ],
  [
    'keys in another order',
    boathouse,
    [
      [
        'members/D1.yaml',
        'self_weight: G\nsection: HEB200\n',
        'section: HEB200\nself_weight: G\n',
      ],
      [
        'members/J1.yaml',
        '{ case: Q, point: 3.5 kN, at: 8.5 m, note: Boat crane }',
        '{ note: Boat crane, at: 8.5 m, point: 3.5 kN, case: Q }',
      ],
      ['project.yaml', '{ Q: L/300, G+Q: L/250 }', '{ G+Q: L/250, Q: L/300 }'],
    ],
  ],
  [
    'loads in another order',
    boathouse,
    [
      [
        'members/M1.yaml',
        '  - { case: Q, point: 4 kN, at: 4.5 m, note: People on the beam }\n',
        '',
      ],
      [
        'members/M1.yaml',
        'loads:\n',
        'loads:\n  - { case: Q, point: 4 kN, at: 4.5 m, note: People on the beam }\n',
      ],
    ],
  ],
  [
    'equal forces and lengths in other units',
    depot,
    [
      ['members/B1.yaml', '900 lb', '0.9 kip'],
      ['members/B1.yaml', 'width: 6 ft 8 in', 'width: 80 in'],
      ['members/K1.yaml', '0.75 kip ft', '9 kip in'],
      ['members/H1.yaml', '[ 3 ft 6 in, 7 ft 6 in ]', '[ 42 in, 7.5 ft ]'],
    ],
  ],
  [
    'equal angles, pressures, stiffnesses and temperatures in other units',
    boathouse,
    [
      ['members/B1.yaml', '35 kN/mm', '35000 kN/m'],
      ['members/P1.yaml', 'difference: 15 K', 'difference: 27 °F'],
      ['loads.yaml', 'floor: { G: 1.1 kPa', 'floor: { G: 1100 Pa'],
      ['members/P1.yaml', 'settlement: 6 mm', 'settlement: 0.6 cm'],
    ],
  ],
  [
    'a station in place of the name of the point there',
    boathouse,
    [
      ['members/D1.yaml', 'point: 5 kN, at: B', 'point: 5 kN, at: 2.5 m'],
      ['members/F1.yaml', 'from: D, to: E', 'from: 14400 mm, to: E'],
    ],
  ],
  [
    'points written as distances from the point before',
    depot,
    [
      ['members/K2.yaml', 'F: 20 ft, B: 26 ft', 'F: +14 ft, B: +6 ft'],
      ['members/C1.yaml', 'C: +7 ft 8 in', 'C: 17 ft'],
    ],
  ],
  [
    'the whole length said or left out',
    depot,
    [
      [
        'members/G2.yaml',
        '{ area: roof, width: 20 ft }',
        '{ area: roof, width: 20 ft, from: "1", to: "3" }',
      ],
      ['members/C1.yaml', 'point: 350 lb, at: C', 'point: 350 lb, at: [ C ]'],
    ],
  ],
  [
    'one line for two cases in place of two lines',
    depot,
    [
      [
        'members/B1.yaml',
        '  - { case: W1, uniform: 0.12 kip/ft, direction: up }\n  - { case: W2, uniform: 0.12 kip/ft, direction: up }\n',
        '  - { uniform: { W1: 0.12 kip/ft, W2: 0.12 kip/ft }, direction: up }\n',
      ],
    ],
  ],
  [
    'short and long forms of a support and of a direction',
    boathouse,
    [
      [
        'members/D1.yaml',
        'point: 5 kN, at: B',
        'point: 5 kN, direction: 270 deg, at: B',
      ],
      ['members/L1.yaml', 'direction: left', 'direction: -180 deg'],
      ['members/F1.yaml', 'D: roller }', 'D: { type: roller, normal: 90 deg } }'],
      ['members/L1.yaml', 'A: guide', 'A: { type: guide }'],
    ],
  ],
  [
    'defaults said',
    boathouse,
    [
      [
        'project.yaml',
        'units: si',
        'units: si\npaper: a4\nlengths: decimal\nconventions: { vertical: up }',
      ],
      [
        'members/D1.yaml',
        'note: Boat in the slings }',
        'direction: down, note: Boat in the slings }',
      ],
      ['loads.yaml', 'for: service }', 'for: service }\n  # last'],
    ],
  ],
  [
    'combinations, alternatives and grounds in another order',
    depot,
    [
      [
        'loads.yaml',
        '[ asce7-strength, asce7-allowable ]',
        '[ asce7-allowable, asce7-strength ]',
      ],
      ['loads.yaml', '[ [ C, W1 ], [ C, W2 ] ]', '[ [ W2, C ], [ W1, C ] ]'],
      ['members/K2.yaml', 'uses: A1', 'uses: [ A1 ]'],
    ],
  ],
  [
    'blanks and line breaks in texts',
    boathouse,
    [
      [
        'project.yaml',
        'it is broken up by hand every morning of frost.',
        'it is broken up\n    by hand every morning of frost.',
      ],
      ['members/J1.yaml', 'title: Jetty stringer', 'title:   "Jetty stringer"'],
    ],
  ],
];

describe('edits of the boathouse', () => {
  const before = projectOf(boathouse);
  test.each(boathouseEdits)('$title', ({ edits, told: expected }) => {
    const after = projectOf(edited(boathouse, edits));
    expect(compareInputs(before, after).map(told)).toEqual(expected);
  });
});

describe('edits of the depot', () => {
  const before = projectOf(depot);
  test.each(depotEdits)('$title', ({ edits, told: expected }) => {
    const after = projectOf(edited(depot, edits));
    expect(compareInputs(before, after).map(told)).toEqual(expected);
  });
});

test.each(silent)('nothing is told of %s', (_, files, edits) => {
  expect(compareInputs(projectOf(files), projectOf(edited(files, edits)))).toEqual([]);
});

test('nothing is told of files of members under other names', () => {
  const moved = Object.fromEntries(
    Object.entries(depot).map(([path, text]) => [
      path.replace('members/J1', 'members/z9').replace('members/K', 'members/a'),
      text,
    ]),
  );
  expect(compareInputs(projectOf(depot), projectOf(moved))).toEqual([]);
});

test('a member added and one removed are told once each', () => {
  const { 'members/D1.yaml': gone = '', ...rest } = boathouse;
  const added = edited({ 'members/N1.yaml': gone }, [
    ['members/N1.yaml', 'mark: D1', 'mark: N1'],
    ['members/N1.yaml', 'title: Davit arm', 'title: New arm'],
    ['members/N1.yaml', 'B: 2.5 m', 'B: 4 m'],
    ['members/N1.yaml', 'A: fixed', 'A: pin, B: pin'],
    ['members/N1.yaml', 'point: 5 kN, at: B', 'uniform: 3 kN/m'],
    ['members/N1.yaml', 'couple: 2 kN m', 'couple: 4 kN m'],
    ['members/N1.yaml', 'HEB200', 'IPE200'],
  ]);
  const after = projectOf({ ...rest, ...added });
  expect(compareInputs(projectOf(boathouse), after).map(told)).toEqual([
    ['removed', 'members D1', 'member D1', 'Davit arm', ''],
    ['added', 'members N1', 'member N1', '', 'New arm'],
  ]);
});

test('every edit turned round is told with its values the other way', () => {
  for (const { edits } of boathouseEdits.slice(0, 5)) {
    const [before, after] = [projectOf(boathouse), projectOf(edited(boathouse, edits))];
    const [there] = compareInputs(before, after);
    const [back] = compareInputs(after, before);
    expect([back?.kind, back?.from, back?.to]).toEqual([
      there?.kind,
      there?.to,
      there?.from,
    ]);
  }
});
