import { expect, test } from 'vitest';
import { memoryWorld, rememberReads } from '../../src/world/index.ts';

const bytesOf = (text: string): Uint8Array => new TextEncoder().encode(text);

test('the files of a folder are remembered as they were first read, in that order', () => {
  const world = memoryWorld({ 'p/b.yaml': 'b', 'p/m/a.yaml': 'a', 'pq/c.yaml': 'c' });
  const { world: asked, within } = rememberReads(world);
  for (const path of ['p/m/a.yaml', 'p/b.yaml', 'pq/c.yaml', 'p/none.yaml'])
    asked.read(path);
  world.write('p/b.yaml', bytesOf('changed'));
  expect(asked.read('p/b.yaml')).toEqual({ bytes: bytesOf('b') });
  expect(within('p')).toEqual([
    { path: 'm/a.yaml', bytes: bytesOf('a') },
    { path: 'b.yaml', bytes: bytesOf('b') },
  ]);
  expect(within('p/')).toEqual(within('p'));
});

test('what was only looked at is not remembered', () => {
  const { world, within } = rememberReads(memoryWorld({ 'p/b.yaml': 'b' }));
  expect(world.sizeOf('p/b.yaml')).toBe(1);
  expect(world.list('p')).toEqual(['b.yaml']);
  expect(within('p')).toEqual([]);
});
