import {
  chmodSync,
  mkdirSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  readlinkSync,
  rmSync,
  statSync,
  symlinkSync,
  writeFileSync,
} from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { diskWorld } from '../../src/world/index.ts';

const world = diskWorld();
const bytes = (text: string): Uint8Array => new TextEncoder().encode(text);
let folder = '';

beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'world-'));
});
afterEach(() => {
  rmSync(folder, { recursive: true, force: true });
});

describe('reading from the disk', () => {
  test('gives a file, its size, and a folder in the order of code units', () => {
    writeFileSync(join(folder, 'b.yaml'), 'mark: B1');
    writeFileSync(join(folder, 'Z.yaml'), '');
    mkdirSync(join(folder, 'images'));
    symlinkSync(join(folder, 'images'), join(folder, 'link'));
    symlinkSync(join(folder, 'gone'), join(folder, 'nowhere'));
    expect(world.read(join(folder, 'b.yaml'))).toEqual({ bytes: bytes('mark: B1') });
    expect(world.sizeOf(join(folder, 'b.yaml'))).toBe(8);
    expect(world.list(folder)).toEqual([
      'Z.yaml',
      'b.yaml',
      'images/',
      'link/',
      'nowhere',
    ]);
  });

  test('answers for what is not there, or is no file', () => {
    writeFileSync(join(folder, 'a'), '');
    expect(world.read(join(folder, 'gone'))).toEqual({ missing: true });
    expect(world.read(join(folder, 'a/b'))).toEqual({ missing: true });
    expect(world.read(folder)).toEqual({ refused: 'it is a folder' });
    expect(world.sizeOf(join(folder, 'gone'))).toBeUndefined();
    expect(world.sizeOf(folder)).toBeUndefined();
    expect(world.list(join(folder, 'a'))).toBeUndefined();
    expect(world.list(join(folder, 'gone'))).toBeUndefined();
  });

  test('says in plain words why the system refuses', () => {
    symlinkSync(join(folder, 'one'), join(folder, 'two'));
    symlinkSync(join(folder, 'two'), join(folder, 'one'));
    expect(world.read(join(folder, 'one'))).toEqual({
      refused: 'its links run in a circle',
    });
    expect(world.read(join(folder, 'x'.repeat(300)))).toEqual({
      refused: 'the name is too long',
    });
  });
});

describe('writing to the disk', () => {
  test('leaves the new bytes and nothing beside them', () => {
    const target = join(folder, 'package.pdf');
    writeFileSync(target, 'old and longer');
    expect(world.write(target, bytes('new'))).toEqual({ written: true });
    expect(readFileSync(target, 'utf8')).toBe('new');
    expect(readdirSync(folder)).toEqual(['package.pdf']);
  });

  test('follows a link and keeps the mode of the file at its end', () => {
    const target = join(folder, 'real');
    writeFileSync(target, 'old', { mode: 0o640 });
    chmodSync(target, 0o640);
    symlinkSync('real', join(folder, 'link'));
    expect(world.write(join(folder, 'link'), bytes('new'))).toEqual({ written: true });
    expect(readlinkSync(join(folder, 'link'))).toBe('real');
    expect(readFileSync(target, 'utf8')).toBe('new');
    expect(statSync(target).mode & 0o777).toBe(0o640);
  });

  test('writes straight into what is no ordinary file', () => {
    expect(world.write('/dev/null', bytes('gone'))).toEqual({ written: true });
    expect(statSync('/dev/null').isCharacterDevice()).toBe(true);
  });

  test('is refused in plain words, and leaves nothing half done', () => {
    writeFileSync(join(folder, 'file'), 'kept');
    mkdirSync(join(folder, 'taken'));
    const cases: readonly (readonly [string, string])[] = [
      ['taken', 'there is a folder of that name'],
      ['gone/package.pdf', 'the folder does not exist'],
      ['file/package.pdf', 'a part of the path is a file, not a folder'],
      ['y'.repeat(300), 'the name is too long'],
    ];
    for (const [path, refused] of cases)
      expect(world.write(join(folder, path), bytes('x'))).toEqual({ refused });
    expect(readdirSync(folder)).toEqual(['file', 'taken']);
    expect(readFileSync(join(folder, 'file'), 'utf8')).toBe('kept');
  });

  test('is refused where the system itself holds the disk read-only', () => {
    // /proc takes no new files, not even from the superuser.
    expect(world.write('/proc/package.pdf', bytes('x'))).toHaveProperty('refused');
    expect(world.makeFolder('/proc/folder')).toHaveProperty('refused');
  });

  test('makes a folder and those above it', () => {
    expect(world.makeFolder(join(folder, 'a/b/c'))).toEqual({ written: true });
    expect(world.makeFolder(join(folder, 'a/b/c'))).toEqual({ written: true });
    expect(world.list(join(folder, 'a/b'))).toEqual(['c/']);
    writeFileSync(join(folder, 'file'), '');
    expect(world.makeFolder(join(folder, 'file'))).toEqual({
      refused: 'there is a file of that name',
    });
    expect(world.makeFolder(join(folder, 'file/below'))).toEqual({
      refused: 'a part of the path is a file, not a folder',
    });
  });
});

describe("the program's own files", () => {
  test('are found beside the program, KaTeX faces where their package lies', () => {
    const regular = world.ownFile('fonts/SourceSerif4-Regular.ttf');
    expect(regular.length).toBeGreaterThan(100_000);
    const face = world.ownFile('KaTeX_Main-Regular.ttf');
    // A TrueType file begins with 0x00010000 (OpenType specification, table directory).
    expect([...face.slice(0, 4)]).toEqual([0, 1, 0, 0]);
  });

  test('are none but the fonts and the templates', () => {
    expect(() => world.ownFile('package.json')).toThrow(RangeError);
    expect(() => world.ownFile('fonts/../package.json')).toThrow(RangeError);
    expect(() => world.ownFile('fonts/missing.ttf')).toThrow();
  });
});
