import { expect, test } from 'vitest';
import { supersededBag } from '../../src/archive/superseded.ts';
import { readProject } from '../../src/project/index.ts';
import { memoryWorld, type World } from '../../src/world/index.ts';
import { completeRow, issueShed, issueYaml } from '../support/issue.ts';

function lookedAt(world: World): ReturnType<typeof supersededBag> {
  return supersededBag(world, 'shed', readProject(world, 'shed').value!.definition);
}

const superseding = (bag: string): string =>
  issueYaml(`status: issued, supersedes: { revision: "-", bag: ${bag} }`);

test('the checksum of the bag that is superseded is taken from where project.yaml says', () => {
  const world = issueShed({
    'project.yaml': superseding('issued/2031-014-0.zip'),
    'issued/2031-014-0.zip': 'abc',
  });
  // SHA-256 of "abc": FIPS 180-4, example of NIST.
  expect(lookedAt(world)).toEqual({
    sha256: 'ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad',
    remarks: [],
  });
});

test('a bag that is not there leaves its checksum open', () => {
  const yaml = superseding('issued/gone.zip');
  expect(lookedAt(issueShed({ 'project.yaml': yaml }))).toEqual({
    sha256: null,
    remarks: [],
  });
});

test('an earlier revision that nothing supersedes is remarked on', () => {
  const rows = `[ ${completeRow.replace('mark: A', 'mark: "-"')}, ${completeRow} ]`;
  const world = issueShed({ 'project.yaml': issueYaml('status: issued', rows) });
  expect(lookedAt(world).remarks).toMatchObject([
    {
      code: 'superseded-not-said',
      message: 'revision A follows -, and nothing says that it supersedes it',
    },
  ]);
  expect(lookedAt(issueShed()).remarks).toEqual([]);
});

test('a path from the root of the disk is taken as it is', () => {
  const world = issueShed({ 'project.yaml': superseding('/vault/a.zip') });
  const wider = memoryWorld({
    ...Object.fromEntries(world.files),
    '/vault/a.zip': 'abc',
  });
  expect(lookedAt(wider).sha256).toMatch(/^ba7816bf/u);
});
