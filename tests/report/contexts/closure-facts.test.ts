import { describe, expect, test } from 'vitest';
import { workProject } from '../../../src/index.ts';
import { closureFacts } from '../../../src/report/contexts/closure-facts.ts';
import { memoryWorld } from '../../../src/world/index.ts';
import { beamYaml } from '../../support/folder.ts';

/** J1 gives 6 kN at either end; G1, 8 m, takes J1.A twice and 4 kN in the middle. */
function factsOf(cases: readonly string[]): unknown {
  const files = {
    'project.yaml': 'project: { title: Weir }\nunits: si\n',
    'loads.yaml': `cases:\n${cases.map((mark) => `  ${mark}: { kind: dead }\n`).join('')}`,
    'members/g1.yaml': beamYaml({
      mark: 'G1',
      points: '{ A: 0 m, M: 4 m, B: 8 m }',
      supports: '{ A: pin, B: roller }',
      loads:
        '[ { reaction: J1.A, at: [ 2 m, 6 m ] }, { case: D, point: 4 kN, at: M } ]',
    }),
    'members/j1.yaml': beamYaml({
      mark: 'J1',
      points: '{ A: 0 m, B: 6 m }',
      supports: '{ A: pin, B: roller }',
      typical: '{ count: 5 }',
      loads: '[ { case: D, uniform: 2 kN/m } ]',
    }),
  };
  const placed = Object.entries(files).map(
    ([path, text]) => [`p/${path}`, text] as const,
  );
  const { project, closures } = workProject(
    memoryWorld(Object.fromEntries(placed)),
    'p',
  );
  if (project === undefined) throw new Error('no project');
  return closureFacts({ project, members: [], closures });
}

describe('the closure as it is printed', () => {
  test('adds up row by row to the figures of the project', () => {
    expect(factsOf(['D', 'S'])).toMatchObject({
      unit: 'kN',
      typical: ['J1'],
      closes: true,
      tables: [
        {
          isVertical: true,
          cases: ['D', 'S'],
          applied: [
            { label: 'G1', values: ['4.00', '0'] },
            { label: 'J1', values: ['12.00', '0'] },
          ],
          again: [{ label: 'J1.A', times: '2', more: '1', values: ['6.00', '0'] }],
          into: ['22.00', '0'],
          ground: [
            { label: 'G1.A', values: ['8.00', '0'] },
            { label: 'G1.B', values: ['8.00', '0'] },
            { label: 'J1.B', values: ['6.00', '0'] },
          ],
          out: ['22.00', '0'],
        },
      ],
    });
  });

  test('goes on in a further table where there are many cases', () => {
    const marks = ['D', 'E', 'F', 'G', 'H', 'I', 'K', 'M'];
    expect(factsOf(marks)).toMatchObject({
      tables: [{ cases: marks.slice(0, 7) }, { cases: ['M'], applied: [], again: [] }],
    });
  });
});
