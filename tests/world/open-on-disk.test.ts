import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, expect, test } from 'vitest';
import { diskWorld, memoryWorld, type OpenFile } from '../../src/world/index.ts';

const disk = diskWorld();
let folder = '';
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'open-'));
  writeFileSync(join(folder, 'digits'), '0123456789');
});
afterEach(() => rmSync(folder, { recursive: true, force: true }));

const both = (): readonly OpenFile[] => {
  const memory = memoryWorld({ digits: '0123456789' });
  return [disk.open(join(folder, 'digits')), memory.open('digits')].flatMap((answer) =>
    'file' in answer ? [answer.file] : [],
  );
};
const text = (bytes: Uint8Array): string => new TextDecoder().decode(bytes);

test('an open file gives any stretch of its bytes, and as many as there are', () => {
  const files = both();
  expect(files).toHaveLength(2);
  for (const file of files) {
    expect(file.size).toBe(10);
    expect(text(file.readAt(3, 4))).toBe('3456');
    expect(text(file.readAt(0, 100))).toBe('0123456789');
    expect(text(file.readAt(8, 4))).toBe('89');
    expect(file.readAt(10, 4)).toHaveLength(0);
    expect(file.readAt(5_000_000_000, 4)).toHaveLength(0);
    file.close();
  }
});

test('a piece may be written over without the file changing', () => {
  for (const file of both()) {
    file.readAt(0, 4).fill(0);
    expect(text(file.readAt(0, 4))).toBe('0123');
    file.close();
  }
});

test('a closed file of the disk is read no more', () => {
  const answer = disk.open(join(folder, 'digits'));
  if (!('file' in answer)) throw new Error('not opened');
  answer.file.close();
  expect(() => answer.file.readAt(0, 1)).toThrow();
});

test('what is not there, or is a folder, is told and not opened', () => {
  mkdirSync(join(folder, 'inside'));
  expect(disk.open(join(folder, 'gone'))).toEqual({ missing: true });
  expect(disk.open(join(folder, 'digits/below'))).toEqual({ missing: true });
  expect(disk.open(join(folder, 'inside'))).toEqual({ refused: 'it is a folder' });
  const memory = memoryWorld({ 'a/b': '' });
  expect(memory.open('gone')).toEqual({ missing: true });
  expect(memory.open('a')).toEqual({ refused: 'it is a folder' });
});
