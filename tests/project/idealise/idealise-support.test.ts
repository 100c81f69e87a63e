import { describe, expect, test } from 'vitest';
import type { BeamStructure } from '../../../src/statics/index.ts';
import { idealise } from '../../../src/project/index.ts';
import { beamYaml, soundFolder } from '../../support/folder.ts';

const supports = (written: string): BeamStructure['supports'] => {
  const project = soundFolder({
    'members/b1.yaml': beamYaml({
      points: '{ A: 1 m, B: 3 m, C: 9 m }',
      supports: written,
      loads: '[ { case: L, point: 1 kN, at: B }, { case: T, point: 1 kN, at: B } ]',
    }),
  });
  const member = project.members[0];
  if (member === undefined) throw new Error('no member');
  return idealise(project, member).structure.supports;
};

describe('a support as restraints', () => {
  test.each([
    [
      'pin',
      [
        { kind: 'force', direction: [1, 0] },
        { kind: 'force', direction: [0, 1] },
      ],
    ],
    ['roller', [{ kind: 'force', direction: [0, 1] }]],
    [
      'fixed',
      [
        { kind: 'force', direction: [1, 0] },
        { kind: 'force', direction: [0, 1] },
        { kind: 'moment' },
      ],
    ],
    ['guide', [{ kind: 'force', direction: [1, 0] }, { kind: 'moment' }]],
  ])('a %s', (type, restraints) => {
    expect(supports(`{ A: ${type} }`)).toEqual([
      { point: 'A', x: 1, type, restraints },
    ]);
  });

  test('an inclined roller acts along its normal, exactly upright at 90 degrees', () => {
    expect(supports('{ A: { type: roller, normal: 60 deg } }')[0]?.restraints).toEqual([
      {
        kind: 'force',
        direction: [expect.closeTo(0.5, 12), expect.closeTo(Math.sqrt(3) / 2, 12)],
      },
    ]);
    expect(supports('{ A: { type: roller, normal: 90 deg } }')[0]?.restraints).toEqual([
      { kind: 'force', direction: [0, 1] },
    ]);
    expect(supports('{ A: { type: roller, normal: 180 deg } }')[0]?.restraints).toEqual(
      [{ kind: 'force', direction: [-1, 0] }],
    );
  });

  test('springs have their stiffness in SI', () => {
    expect(
      supports(
        '{ A: { type: spring, stiffness: 40 kN/mm, rotation: 900 kN m/rad } }',
      )[0]?.restraints,
    ).toEqual([
      { kind: 'force', direction: [0, 1], stiffness: expect.closeTo(4e7, 3) },
      { kind: 'moment', stiffness: expect.closeTo(9e5, 6) },
    ]);
    expect(
      supports('{ A: { type: spring, rotation: 900 kN m/rad } }')[0]?.restraints,
    ).toHaveLength(1);
    expect(
      supports('{ A: { type: pin, rotation: 900 kN m/rad } }')[0]?.restraints,
    ).toHaveLength(3);
  });

  test('a settlement is felt by the vertical part of a reaction', () => {
    expect(
      supports('{ A: { type: fixed, settlement: 10 mm, case: T } }')[0]?.restraints,
    ).toEqual([
      { kind: 'force', direction: [1, 0] },
      {
        kind: 'force',
        direction: [0, 1],
        settlements: [{ case: 'T', value: expect.closeTo(0.01, 12) }],
      },
      { kind: 'moment' },
    ]);
    expect(
      supports('{ A: { type: roller, normal: 30 deg, settlement: 10 mm, case: T } }')[0]
        ?.restraints[0],
    ).toMatchObject({ settlements: [{ case: 'T', value: expect.closeTo(0.005, 12) }] });
    expect(
      supports('{ A: { type: roller, normal: 0 deg, settlement: 10 mm, case: T } }')[0]
        ?.restraints[0],
    ).not.toHaveProperty('settlements');
  });
});
