import { expect, test } from 'vitest';
import { bagsBelow } from '../../../src/archive/index.ts';
import { memoryWorld, type World } from '../../../src/world/index.ts';

test('every zip is found, hidden or not, in natural order by its path', () => {
  const paths = ['B2.zip', 'B10.zip', '.kept/a.zip', 'b/c/d.ZIP', 'b/notes.txt'];
  const files = Object.fromEntries(paths.map((path) => [`vault/${path}`, '']));
  for (const folder of ['vault', 'vault/'])
    expect(bagsBelow(memoryWorld(files), folder)).toEqual({
      bags: ['.kept/a.zip', 'B2.zip', 'B10.zip', 'b/c/d.ZIP'],
      unsearched: [],
    });
});

test('a folder that holds itself has an end, and is told', () => {
  const world: World = { ...memoryWorld({}), list: () => ['again/'] };
  const { bags, unsearched } = bagsBelow(world, 'vault');
  expect(bags).toEqual([]);
  expect(unsearched).toHaveLength(1);
  expect(unsearched[0]).toMatch(/^(?:again\/)+$/u);
});
