import { expect, test } from 'vitest';
import type { ProjectDefinition } from '../../../src/project/index.ts';
import { initialsOf, successorOf } from '../../../src/report/contexts/foot.ts';
import { beamYaml, soundFolder } from '../../support/folder.ts';

test('initials stand in a box only where that person’s own date was given', () => {
  expect(initialsOf({ name: 'A. Quill', initials: 'AQ', date: '2031-03-14' })).toBe(
    'AQ 2031-03-14',
  );
  expect(initialsOf({ name: 'R. Tamsin', initials: 'RT' })).toBe('');
  expect(initialsOf(undefined)).toBe('');
});

test('what replaces a superseded package is named by number and revision', () => {
  const named = (keys: string): string | undefined => successorOf(definitionOf(keys));
  const by = 'superseded_by: { revision: B, date: 2031-05-02 }';
  expect(named(`number: "2031-014", status: superseded, ${by}`)).toBe('2031-014 B');
  expect(named(`status: superseded, ${by}`)).toBe('B');
  expect(
    named('status: superseded, superseded_by: { number: "2031-020", revision: A }'),
  ).toBe('2031-020 A');
  expect(named('status: superseded')).toBeUndefined();
  expect(named(`status: issued, ${by}`)).toBeUndefined();
});

const definitionOf = (keys: string): ProjectDefinition =>
  soundFolder({
    'project.yaml': `project: { title: Weir crossing, ${keys} }\nunits: us\n`,
    'members/b1.yaml': beamYaml(),
  }).definition;
