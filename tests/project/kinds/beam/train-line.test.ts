import { describe, expect, test } from 'vitest';
import { idealise } from '../../../../src/project/index.ts';
import type { BeamDefinition, Project } from '../../../../src/project/index.ts';
import { beamYaml, soundFolder } from '../../../support/folder.ts';

function beam(line: string): { project: Project; member: BeamDefinition } {
  const project = soundFolder({
    'members/b1.yaml': beamYaml({ loads: `[ ${line} ]` }),
  });
  return { project, member: project.members[0]! };
}

describe('a line of axles', () => {
  test('is read with its defaults, said to be such', () => {
    const { member } = beam('{ axles: 12 kip, note: hoist }');
    expect(member.loads).toEqual([]);
    expect(member.trains).toMatchObject([
      {
        spacings: [],
        travel: { value: 'both', origin: 'default' },
        relieving: { value: 'kept', origin: 'default' },
        note: 'hoist',
      },
    ]);
  });

  test('becomes a train in SI units, factors applied to what they name', () => {
    const { project, member } = beam(
      '{ axles: [ 10 kN, 20 kN ], spacing: [ 2 m to 300 cm ], travel: left, lane: 4 kN/m, times: { axles: 1.5 }, because: office rule, relieving: left out }',
    );
    expect(idealise(project, member).structure.trains).toEqual([
      {
        id: member.trains[0]!.id,
        case: 'all',
        axles: [15e3, 30e3],
        spacings: [{ least: 2, greatest: 3 }],
        travel: 'left',
        lane: 4e3,
        relieving: 'left out',
      },
    ]);
  });

  test('takes one number as the factor of axles and lane alike', () => {
    const { project, member } = beam(
      '{ axles: [ 10 kN ], lane: 4 kN/m, times: 1.2, because: office rule }',
    );
    const [train] = idealise(project, member).structure.trains!;
    expect(train!.axles[0]).toBeCloseTo(12e3, 9);
    expect(train!.lane).toBeCloseTo(4.8e3, 9);
  });
});
