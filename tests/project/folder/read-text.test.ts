import { describe, expect, test } from 'vitest';
import { readBytes, readText } from '../../../src/project/folder/read-text.ts';
import { memoryWorld } from '../../../src/world/index.ts';

const encoder = new TextEncoder();

describe('a text of the folder', () => {
  test('comes with its digest, and without its byte order mark', () => {
    const world = memoryWorld({ 'p/a.yaml': new Uint8Array([0xef, 0xbb, 0xbf, 0x61]) });
    expect(readText(world, 'p', 'a.yaml')).toMatchObject({
      kind: 'read',
      file: {
        path: 'a.yaml',
        text: 'a',
        sha256: expect.stringMatching(/^[0-9a-f]{64}$/),
      },
    });
  });

  test.each([
    ['Latin-1', new Uint8Array([0x63, 0x61, 0x66, 0xe9])],
    ['UTF-16', new Uint8Array([0xff, 0xfe, 0x61, 0x00])],
    ['a lone surrogate', new Uint8Array([0xed, 0xa0, 0x80])],
    ['a NUL', new Uint8Array([0x61, 0x00])],
  ])('is refused in %s', (_, bytes) => {
    const answer = readText(memoryWorld({ 'p/a.yaml': bytes }), 'p/', 'a.yaml');
    expect(answer).toMatchObject({
      kind: 'refused',
      diagnostic: { code: 'file-not-text' },
    });
  });

  test('may hold just 1 MB, and a byte more is refused even where the size was not known before', () => {
    const world = memoryWorld({
      'p/a': new Uint8Array(1_000_000),
      'p/b': new Uint8Array(1_000_001),
    });
    expect(readBytes(world, 'p', 'a').kind).toBe('read');
    expect(readBytes(world, 'p', 'b')).toMatchObject({
      diagnostic: { code: 'file-too-large' },
    });
    const unsized = { ...world, sizeOf: (): undefined => undefined };
    expect(readBytes(unsized, 'p', 'b')).toMatchObject({
      diagnostic: { code: 'file-too-large' },
    });
  });

  test('that is not there is missing', () => {
    expect(readText(memoryWorld({ 'p/b': encoder.encode('') }), 'p', 'a.yaml')).toEqual(
      { kind: 'missing' },
    );
  });
});
