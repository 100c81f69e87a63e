import { describe, expect, test } from 'vitest';
import { compare, isAlike } from '../../src/comparison/index.ts';
import { edited, type Edit, type Files } from '../support/demo-edit.ts';
import { plainBeam, workedSide } from '../support/worked-side.ts';

const carry = (mark: string): string => `{ reaction: ${mark}.B, at: 6 ft }`;

/** B1 to B4 carry one another in a row; C1 and C2 stand alone, C2 with a section of the project's. */
const row: Files = {
  'project.yaml': [
    'project: { title: Weir }',
    'units: us',
    'criteria: { deflection_limits: { L: L/360 } }',
    'assumptions:',
    '  - { id: A1, text: Ends turn freely. }',
    'sections: { plank: { I: 90 in^4 } }',
    '',
  ].join('\n'),
  'loads.yaml':
    'cases: { D: { kind: dead }, L: { kind: live } }\nareas: { deck: { L: 50 psf } }\n',
  'members/b1.yaml': plainBeam('B1', '{ area: deck, width: 4 ft }'),
  'members/b2.yaml': plainBeam('B2', carry('B1')),
  'members/b3.yaml': plainBeam('B3', carry('B2')),
  'members/b4.yaml': plainBeam('B4', `${carry('B3')}, ${carry('C1')}`),
  'members/c1.yaml': plainBeam('C1', '{ case: D, point: 1 kip, at: 6 ft }', 'uses: A1'),
  'members/c2.yaml': plainBeam(
    'C2',
    '{ case: D, point: 1 kip, at: 6 ft }',
    'section: plank\nmaterial: { E: 1600 ksi }',
  ),
};
const before = workedSide(row);

/** Reach of some edits, a line a member: how, and from which others. */
function reached(edits: readonly Edit[]): readonly string[] {
  return compare(before, workedSide(edited(row, edits))).reach.map(
    ({ member, by, from }) => [member, by, ...from].join(' '),
  );
}

describe('reachOf', () => {
  test('reaches nobody where nothing changed', () => {
    const comparison = compare(before, before);
    expect(comparison.reach).toEqual([]);
    expect(isAlike(comparison)).toBe(true);
  });

  test('follows carried reactions through every member that they reach', () => {
    expect(reached([['members/b2.yaml', 'B: 12 ft', 'B: 13 ft']])).toEqual([
      'B2 definition',
      'B3 carried B2',
      'B4 carried B3',
    ]);
  });

  test('names every member from which a change comes', () => {
    expect(
      reached([
        ['members/b3.yaml', 'at: 6 ft', 'at: 5 ft'],
        ['members/c1.yaml', 'point: 1 kip', 'point: 2 kip'],
      ]),
    ).toEqual(['B3 definition', 'B4 carried B3 C1', 'C1 definition']);
  });

  test('reaches those that use an area load, and what carries them', () => {
    expect(reached([['loads.yaml', '50 psf', '60 psf']])).toEqual([
      'B1 project',
      'B2 carried B1',
      'B3 carried B2',
      'B4 carried B3',
    ]);
  });

  test('reaches the users of a section alone', () => {
    expect(reached([['project.yaml', '90 in^4', '95 in^4']])).toEqual(['C2 project']);
  });

  test('reaches those that lean on an assumption, and what carries them', () => {
    expect(
      reached([['project.yaml', 'Ends turn freely.', 'Ends turn quite freely.']]),
    ).toEqual(['B4 carried C1', 'C1 project']);
  });

  test('reaches all by a category of a case', () => {
    expect(
      reached([['loads.yaml', 'L: { kind: live }', 'L: { kind: live, category: A }']]),
    ).toHaveLength(6);
  });

  test('reaches all by a convention, and none by what stands on the cover', () => {
    expect(
      reached([
        ['project.yaml', 'units: us', 'units: us\nconventions: { vertical: down }'],
      ]),
    ).toHaveLength(6);
    expect(reached([['project.yaml', 'title: Weir', 'title: Upper weir']])).toEqual([]);
  });

  test('reaches by a new combination whatever has a figure that it gives', () => {
    const text = 'areas:';
    expect(
      reached([
        [
          'loads.yaml',
          text,
          `combinations: [ { mark: U, factors: { D: 1.2 } } ]\n${text}`,
        ],
      ]).map((line) => line.split(' ')[0]),
    ).toEqual(['B1', 'B2', 'B3', 'B4', 'C1', 'C2']);
  });

  test('knows a renamed member again, and all that carry it', () => {
    expect(
      reached([
        ['members/b1.yaml', 'mark: B1', 'mark: B9'],
        ['members/b2.yaml', 'B1.B', 'B9.B'],
      ]),
    ).toEqual(['B9 definition', 'B2 carried B9', 'B3 carried B2', 'B4 carried B3']);
  });

  test('spares members whose sheets only stand in another place', () => {
    expect(
      reached([
        [
          'project.yaml',
          'units: us',
          'units: us\nsheet_order: [ C2, C1, B1, B2, B3, B4 ]',
        ],
      ]),
    ).toEqual([]);
  });
});
