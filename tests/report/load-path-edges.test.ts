import { expect, test } from 'vitest';
import { loadPathEdges } from '../../src/report/load-path-edges.ts';
import { beamYaml, soundFolder } from '../support/folder.ts';

const project = soundFolder({
  'members/b1.yaml': beamYaml({ loads: '[ { point: 1 kip, at: B } ]' }),
  'members/g1.yaml': beamYaml({
    mark: 'G1',
    loads:
      '[ { reaction: B1.A, at: [ B, 9 ft ] }, { reaction: B1.C, at: 12 ft, times: 2, because: one either side }, { reaction: B1.C, at: 15 ft, carry: all } ]',
  }),
});

test('a reaction that acts at several places of a member is one step of the path', () => {
  expect(loadPathEdges(project, ['B1', 'G1'])).toEqual([
    {
      from: 'B1',
      point: 'A',
      to: 'G1',
      at: ['B', '9\u00a0ft'],
      times: 1,
      isWhole: false,
    },
    { from: 'B1', point: 'C', to: 'G1', at: ['12\u00a0ft'], times: 2, isWhole: false },
    { from: 'B1', point: 'C', to: 'G1', at: ['15\u00a0ft'], times: 1, isWhole: true },
  ]);
});

test('what one end of is not in the package is left out', () => {
  expect(loadPathEdges(project, ['G1'])).toEqual([]);
});
