import { describe, expect, test } from 'vitest';
import { bagName, bagPlace, keepBag } from '../../src/archive/bag-place.ts';
import type { ProjectDefinition } from '../../src/project/index.ts';
import { memoryWorld } from '../../src/world/index.ts';
import { soundFolder, beamYaml } from '../support/folder.ts';

function definition(
  number: string | undefined,
  mark: string | undefined,
): ProjectDefinition {
  const about = number === undefined ? '' : `, number: ${JSON.stringify(number)}`;
  const rows = mark === undefined ? '[]' : `[ { mark: ${JSON.stringify(mark)} } ]`;
  return soundFolder({
    'project.yaml': `project: { title: Weir crossing${about} }\nunits: us\nrevisions: ${rows}\n`,
    'members/b1.yaml': beamYaml(),
  }).definition;
}

describe('the name of a bag', () => {
  test.each([
    ['2031-014', 'A', '2031-014-A'],
    ['2031-014', '-', '2031-014-0'],
    ['2031/014 b', 'P 01.2', '2031-014-b-P-01.2'],
    ['../../etc', '..', 'etc-0'],
    ['Nº 7', 'Ä', 'Nº-7-Ä'],
    [undefined, 'A', 'Weir-crossing-A'],
    ['2031-014', undefined, '2031-014-unrevised'],
    ['2031-014 ', 'A\u0000\n', '2031-014-A'],
  ])('of number %s and mark %s is %s', (number, mark, name) => {
    if (mark?.includes('\u0000') === true) {
      const revisions = [{ mark }];
      expect(bagName({ ...definition(number, 'A'), revisions })).toBe(name);
    } else expect(bagName(definition(number, mark))).toBe(name);
  });

  test('stands in the folder issued of the project', () => {
    const of = definition('2031-014', 'A');
    expect(bagPlace('shed', of)).toBe('shed/issued/2031-014-A.zip');
    expect(bagPlace('.', of)).toBe('issued/2031-014-A.zip');
  });
});

describe('keeping a bag', () => {
  test('makes the folder and writes once', () => {
    const world = memoryWorld({ 'shed/project.yaml': '' });
    expect(keepBag(world, 'shed/issued/a.zip', new Uint8Array([1]))).toBeUndefined();
    expect(keepBag(world, 'shed/issued/a.zip', new Uint8Array([2]))).toMatchObject({
      code: 'archive-exists',
    });
    expect(world.read('shed/issued/a.zip')).toEqual({ bytes: new Uint8Array([1]) });
  });

  test('tells what the disk refuses', () => {
    const world = memoryWorld({ 'shed/project.yaml': '' });
    const full = { ...world, writeNew: () => ({ refused: 'the disk is full' }) };
    expect(keepBag(full, 'shed/issued/a.zip', new Uint8Array([1]))).toMatchObject({
      code: 'write-failed',
      message: 'shed/issued/a.zip cannot be written: the disk is full',
    });
    const file = memoryWorld({ 'shed/issued': '' });
    expect(keepBag(file, 'shed/issued/a.zip', new Uint8Array([1]))).toMatchObject({
      code: 'write-failed',
    });
  });
});
