import { describe, expect, test } from 'vitest';
import {
  memoryWorld,
  piecesBetween,
  readableOf,
  type OpenFile,
} from '../../src/world/index.ts';

const bytes = Uint8Array.from({ length: 600_000 }, (_, index) => index % 251);
function file(): OpenFile {
  const answer = memoryWorld({ a: bytes }).open('a');
  if (!('file' in answer)) throw new Error('not opened');
  return answer.file;
}

describe('a stretch of an open file', () => {
  test('comes in pieces of at most 256 KiB, which together are the stretch', () => {
    const pieces = [...piecesBetween(file(), 100, 599_900)];
    expect(pieces.map(({ length }) => length)).toEqual([262_144, 262_144, 75_512]);
    expect(Buffer.concat(pieces).equals(bytes.slice(100, 599_900))).toBe(true);
  });

  test('ends where the file ends, and may hold nothing', () => {
    expect([...piecesBetween(file(), 599_990, 700_000)]).toEqual([bytes.slice(-10)]);
    expect([...piecesBetween(file(), 5, 5)]).toEqual([]);
  });

  test('comes as a stream of the same bytes', async () => {
    const pieces: Buffer[] = [];
    for await (const piece of readableOf(file(), 7, 500_000))
      pieces.push(piece as Buffer);
    expect(Buffer.concat(pieces).equals(bytes.slice(7, 500_000))).toBe(true);
  });

  test('breaks the stream off where the disk fails', async () => {
    const failing = {
      ...file(),
      readAt: () => {
        throw new Error('EIO');
      },
    };
    await expect(readableOf(failing, 0, 10).toArray()).rejects.toThrow('EIO');
  });
});
