import { describe, expect, test } from 'vitest';
import { pathIn, sourceReader } from '../../src/cli/source-reader.ts';
import { memoryWorld } from '../../src/world/index.ts';

describe('the files that diagnostics point into', () => {
  test('are read once', () => {
    const world = memoryWorld({ 'shed/a.yaml': 'one\ntwo' });
    let reads = 0;
    const source = sourceReader(
      {
        ...world,
        read: (path) => {
          reads += 1;
          return world.read(path);
        },
      },
      'shed',
    );
    expect(source('a.yaml')?.starts).toEqual([0, 4]);
    source('a.yaml');
    source('missing.yaml');
    source('missing.yaml');
    expect(reads).toBe(2);
  });

  test('are not shown where they are too large or no text', () => {
    const world = memoryWorld({
      'shed/large.yaml': 'x'.repeat(1_000_001),
      'shed/bytes.yaml': new Uint8Array([0xff, 0xfe]),
      'shed/nul.yaml': 'a\0b',
    });
    const source = sourceReader(world, 'shed');
    expect(
      ['large.yaml', 'bytes.yaml', 'nul.yaml', 'missing.yaml'].map(source),
    ).toEqual([undefined, undefined, undefined, undefined]);
  });
});

test('paths are written as the user would', () => {
  expect([
    pathIn('shed', 'a.yaml'),
    pathIn('/', 'a.yaml'),
    pathIn('.', 'a.yaml'),
  ]).toEqual(['shed/a.yaml', '/a.yaml', 'a.yaml']);
});
