import { expect, test } from 'vitest';
import { beamYaml, soundFolder } from '../../support/folder.ts';

const marks = (order: string): readonly string[] =>
  soundFolder({
    'project.yaml': `project: { title: Weir }\nunits: us\n${order}`,
    ...Object.fromEntries(
      ['B1', 'B2', 'B10', 'G1'].map((mark) => [
        `members/${mark}.yaml`,
        beamYaml({ mark }),
      ]),
    ),
  }).members.map((member) => member.mark);

test('members stand in natural order of their files, those that the project lists before all others', () => {
  expect(marks('')).toEqual(['B1', 'B2', 'B10', 'G1']);
  expect(marks('sheet_order: [ G1, B10 ]\n')).toEqual(['G1', 'B10', 'B1', 'B2']);
  expect(marks('sheet_order: [ ]\n')).toEqual(['B1', 'B2', 'B10', 'G1']);
});
