import { expect, test } from 'vitest';
import { workProject } from '../../../src/index.ts';
import { memberReport } from '../../../src/report/member-outcomes.ts';
import { reactionFacts } from '../../../src/report/contexts/reaction-facts.ts';
import { memoryWorld } from '../../../src/world/index.ts';
import { beamYaml } from '../../support/folder.ts';

/** Facts of members by mark, each with its level or none. */
function factsOf(levels: Readonly<Record<string, string | undefined>>): unknown {
  const members = Object.entries(levels).map(([mark, level]) => [
    `p/members/${mark}.yaml`,
    beamYaml({
      mark,
      loads: '[ { point: 1 kip, at: B } ]',
      ...(level === undefined ? {} : { where: `{ level: ${level} }` }),
    }),
  ]);
  const world = memoryWorld({
    'p/project.yaml': 'project: { title: Weir }\nunits: us\n',
    ...(Object.fromEntries(members) as Readonly<Record<string, string>>),
  });
  const { project, combinations, closures, members: worked } = workProject(world, 'p');
  if (project === undefined) throw new Error('no project');
  return reactionFacts({
    project,
    combinations,
    closures,
    members: worked.map((member) => memberReport(project, member)),
    loadPath: [],
    worked: [],
    asIs: [],
    program: { name: 'sumzero', version: '0' },
  });
}

test('members stand level by level as the sheets come to them, those of no level last', () => {
  expect(factsOf({ B1: undefined, B2: 'roof', B3: 'deck', B4: 'roof' })).toMatchObject({
    hasLevels: true,
    levels: [
      { level: 'roof', members: [{ mark: 'B2' }, { mark: 'B4' }] },
      { level: 'deck', members: [{ mark: 'B3' }] },
      { level: undefined, members: [{ mark: 'B1' }] },
    ],
    closure: undefined,
  });
});

test('a project without levels has no heads of levels', () => {
  expect(factsOf({ B1: undefined, B2: undefined })).toMatchObject({
    hasLevels: false,
    levels: [{ members: [{ mark: 'B1' }, { mark: 'B2' }] }],
  });
});
