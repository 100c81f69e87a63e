import { describe, expect, test } from 'vitest';
import { beamYaml, readFolder } from '../../support/folder.ts';

const codesOf = (people: string): readonly string[] =>
  readFolder({
    'project.yaml': `project: { title: Weir }\nunits: us\n${people}`,
    'members/b1.yaml': beamYaml(),
  })
    .diagnostics.filter((one) => one.severity === 'error')
    .map((one) => `${one.code} ${one.message}`);

describe('nobody checks work of their own', () => {
  test.each([
    [
      'the same name',
      '{ name: A. Quill, initials: AQ }',
      '{ name: A. Quill, initials: XX }',
    ],
    [
      'the same name, spelt otherwise',
      '{ name: A. Quill, initials: AQ }',
      '{ name: a quill, initials: XX }',
    ],
    [
      'the same initials',
      '{ name: A. Quill, initials: AQ }',
      '{ name: Adam Quartz, initials: A.Q. }',
    ],
  ])('by %s', (_, prepared, checked) => {
    expect(codesOf(`people: { prepared: ${prepared}, checked: ${checked} }\n`)).toEqual(
      [expect.stringMatching(/^same-person .* both prepares and checks$/)],
    );
  });

  test('on a revision', () => {
    expect(codesOf('revisions: [ { mark: B, prepared: AQ, checked: aq } ]\n')).toEqual([
      'same-person revision B is prepared and checked by one person, aq',
    ]);
  });

  test('and two people are two', () => {
    const people =
      'people: { prepared: { name: A. Quill, initials: AQ }, checked: { name: R. Tamsin, initials: RT }, approved: { name: A. Quill, initials: AQ } }\n';
    expect(codesOf(people)).toEqual([]);
    expect(codesOf('people: { prepared: { name: A. Quill, initials: AQ } }\n')).toEqual(
      [],
    );
    expect(
      codesOf(
        'revisions: [ { mark: B, prepared: AQ, checked: RT }, { mark: A, prepared: AQ } ]\n',
      ),
    ).toEqual([]);
  });
});
