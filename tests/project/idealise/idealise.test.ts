import { describe, expect, test } from 'vitest';
import { idealise } from '../../../src/project/index.ts';
import { solveBeam } from '../../../src/statics/index.ts';
import { beamYaml, soundFolder } from '../../support/folder.ts';

const project = soundFolder({
  'project.yaml': 'project: { title: Weir }\nunits: si\n',
  'loads.yaml':
    'cases:\n  D: { kind: dead }\n  L: { kind: live }\n  S: { kind: snow }\n',
  'members/b1.yaml': beamYaml({
    points: '{ A: 2 m, B: 4 m, C: 8 m }',
    loads:
      '[ { case: L, point: 12 kN, at: B }, { reaction: B2.A, at: 5 m }, { case: D, uniform: 2 kN/m } ]',
  }),
  'members/b2.yaml': beamYaml({
    mark: 'B2',
    points: '{ A: 0 m, B: 6 m }',
    supports: '{ A: pin, B: roller }',
    loads: '[ { case: L, point: 10 kN, at: 3 m } ]',
  }),
});
const [b1, b2] = project.members;
if (b1 === undefined || b2 === undefined) throw new Error('two members are wanted');

describe('a member as a structure', () => {
  test('keeps the axis of the file and every case of the project', () => {
    const { structure } = idealise(project, b1);
    expect(structure.points).toEqual([
      { name: 'A', x: 2 },
      { name: 'B', x: 4 },
      { name: 'C', x: 8 },
    ]);
    expect(structure.cases).toEqual(['D', 'L', 'S']);
    expect(structure.loads.map((load) => load.id)).toEqual(['load-0001', 'load-0003']);
  });

  test('takes carried reactions in their place among the loads, and knows where each load comes from', () => {
    const solved = solveBeam(idealise(project, b2).structure);
    if (solved.kind === 'unsolved') throw new Error('unsolved');
    const components = solved.results.map((result) => ({
      id: 'load-0002',
      case: result.mark,
      reaction: result.reactions[0] ?? { x: null, y: null, moment: null },
    }));
    const { structure, loads, leftBehind } = idealise(project, b1, components);
    expect(structure.loads).toEqual(loads.map((view) => view.load));
    expect(loads.map((view) => [view.load.id, view.kind, view.from.id])).toEqual([
      ['load-0001', 'given', 'load-0001'],
      ['load-0002:L:force', 'carried', 'load-0002'],
      ['load-0003', 'given', 'load-0003'],
    ]);
    expect(structure.loads[1]).toMatchObject({
      x: 5,
      fx: 0,
      fy: expect.closeTo(-5000, 6),
    });
    expect(leftBehind).toEqual([]);
  });

  test('is solved to reactions that a hand would find', () => {
    // Simple span of 6 m: 12 kN at 2 m from the left gives 8 kN left, 4 kN right.
    const solved = solveBeam(idealise(project, b1).structure);
    if (solved.kind === 'unsolved') throw new Error('unsolved');
    const live = solved.results.find((result) => result.mark === 'L');
    expect(live?.reactions.map((one) => one.y)).toEqual([
      expect.closeTo(8000, 6),
      expect.closeTo(4000, 6),
    ]);
  });
});
