import { expect, test } from 'vitest';
import { findPackages } from '../../../src/archive/register/find-packages.ts';
import { memoryWorld } from '../../../src/world/index.ts';

const world = memoryWorld({
  'all/shed/project.yaml': '',
  'all/shed/package.pdf': '',
  'all/shed/issued/1-A.zip': '',
  'all/shed/images/scan.pdf': '',
  'all/shed/.git/old.zip': '',
  'all/vault/1-A.ZIP': '',
  'all/vault/package.pdf': '',
  'all/vault/notes.txt': '',
  'all/a/b/c/d/in-reach.zip': '',
  'all/a/b/c/d/e/too-deep.zip': '',
  'all/node_modules/x/y.zip': '',
});

test('a folder is searched for projects, bags and PDFs, not too deep, hidden folders left out', () => {
  expect(findPackages(world, ['all']).map(({ path }) => path)).toEqual([
    'all/a/b/c/d/in-reach.zip',
    'all/shed',
    'all/shed/issued/1-A.zip',
    'all/vault/1-A.ZIP',
    'all/vault/package.pdf',
  ]);
});

test('what was named is known as named, and each is taken once', () => {
  expect(
    findPackages(world, ['all/shed', 'all/vault/notes.txt', 'all/shed/issued/1-A.zip']),
  ).toEqual([
    { path: 'all/shed', isNamed: true },
    { path: 'all/shed/issued/1-A.zip', isNamed: true },
    { path: 'all/vault/notes.txt', isNamed: true },
  ]);
});
