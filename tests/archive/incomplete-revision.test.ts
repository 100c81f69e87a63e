import { expect, test } from 'vitest';
import { incompleteRevision } from '../../src/archive/index.ts';
import { readProject } from '../../src/project/index.ts';
import { completeRow, issueShed, issueYaml } from '../support/issue.ts';

function lacking(rows: string): readonly string[] {
  const yaml = issueYaml('status: issued', rows);
  const project = readProject(issueShed({ 'project.yaml': yaml }), 'shed').value!;
  return incompleteRevision(project).map(({ message }) => message);
}

test('a complete record lacks nothing', () => {
  expect(lacking(`[ ${completeRow} ]`)).toEqual([]);
});

test.each([
  ['date: 2031-03-14', 'its date'],
  ['note: First issue', 'a note of what was changed'],
  ['reason: Permit', 'the reason'],
  ['prepared: AQ', 'who prepared it'],
  ['checked: RT', 'who checked it'],
  ['sheets: all', 'the sheets affected'],
])('a row without %s lacks %s', (key, words) => {
  const row = completeRow.replace(`${key}, `, '').replace(`, ${key}`, '');
  expect(lacking(`[ ${row} ]`)).toEqual([`revision A lacks ${words}`]);
});

test('earlier rows count too, and a project without rows has no revision to archive', () => {
  const bare = completeRow.replace(/, date.*\}/u, ' }').replace('mark: A', 'mark: "0"');
  expect(lacking(`[ ${bare}, ${completeRow} ]`)).toEqual([
    'revision 0 lacks its date, a note of what was changed, the reason, who prepared it, who checked it and the sheets affected',
  ]);
  expect(lacking('[]')).toEqual([
    'there is no record of revisions in project.yaml, and a package is archived as a revision',
  ]);
});
