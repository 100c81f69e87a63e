import { spawn } from 'node:child_process';
import { once } from 'node:events';
import {
  existsSync,
  lstatSync,
  mkdirSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
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
  folder = mkdtempSync(join(tmpdir(), 'write-'));
});
afterEach(() => {
  rmSync(folder, { recursive: true, force: true });
});

describe('writing a file that must be new', () => {
  test('leaves the bytes and nothing beside them, with the mode of any new file', () => {
    const target = join(folder, 'issued.zip');
    expect(world.writeNew(target, bytes('new'))).toEqual({ written: true });
    expect(readFileSync(target, 'utf8')).toBe('new');
    writeFileSync(join(folder, 'ordinary'), '');
    expect(statSync(target).mode).toBe(statSync(join(folder, 'ordinary')).mode);
    expect(statSync(target).nlink).toBe(1);
    expect(readdirSync(folder).toSorted()).toEqual(['issued.zip', 'ordinary']);
  });

  test('is refused where there is one, and leaves that as it is', () => {
    const target = join(folder, 'issued.zip');
    writeFileSync(target, 'old');
    expect(world.writeNew(target, bytes('new'))).toEqual({
      refused: 'there is a file of that name',
    });
    expect(readFileSync(target, 'utf8')).toBe('old');
    expect(readdirSync(folder)).toEqual(['issued.zip']);
  });

  test('is refused where there is a folder, or a link even to nothing', () => {
    mkdirSync(join(folder, 'taken'));
    symlinkSync(join(folder, 'nothing'), join(folder, 'link'));
    for (const name of ['taken', 'link'])
      expect(world.writeNew(join(folder, name), bytes('x'))).toHaveProperty('refused');
    expect(existsSync(join(folder, 'nothing'))).toBe(false);
    expect(lstatSync(join(folder, 'link')).isSymbolicLink()).toBe(true);
    expect(readdirSync(folder).toSorted()).toEqual(['link', 'taken']);
  });

  test('is refused in plain words where the folder is not there', () => {
    expect(world.writeNew(join(folder, 'gone/issued.zip'), bytes('x'))).toEqual({
      refused: 'the folder does not exist',
    });
  });
});

// The built program: only a process of its own can be killed.
const door = new URL('../../dist/world/index.js', import.meta.url).href;
const size = 8_000_000;

/**
 * Starts a process that writes `call` again and again, kills it `after` milliseconds after its first word
 * (which it gives when it begins to write), and waits until it is gone.
 */
async function killedWhile(call: string, after: number): Promise<void> {
  const script = `
    const { diskWorld } = await import(${JSON.stringify(door)});
    const world = diskWorld();
    const bytes = new Uint8Array(${size}).fill(0x6e);
    process.stdout.write('writing');
    for (let round = 0; ; round += 1) ${call};`;
  const child = spawn(process.execPath, ['--input-type=module', '-e', script], {
    stdio: ['ignore', 'pipe', 'inherit'],
  });
  const gone = once(child, 'exit');
  await once(child.stdout, 'data');
  await new Promise((resolve) => setTimeout(resolve, after));
  child.kill('SIGKILL');
  const [, signal]: unknown[] = await gone;
  expect(signal).toBe('SIGKILL');
}

/** The content of a file as one word: which letter it is made of throughout, and how long it is. */
function contentOf(path: string): string {
  const found = readFileSync(path);
  const letters = new Set(found);
  return `${found.length} of ${[...letters].map((letter) => String.fromCharCode(letter)).join('')}`;
}

describe('a process killed while it writes', () => {
  // Spread over the time that a few rounds of writing take.
  const moments = [0, 1, 3, 8, 21, 55];

  test('leaves the old file or the new one, never a part of either', async () => {
    const target = join(folder, 'package.pdf');
    for (const after of moments) {
      writeFileSync(target, Buffer.alloc(5_000_000, 'o'));
      await killedWhile(`world.write(${JSON.stringify(target)}, bytes)`, after);
      expect(['5000000 of o', `${size} of n`]).toContain(contentOf(target));
    }
  });

  test('leaves a new file whole, or none of its name', async () => {
    for (const after of moments) {
      const inside = join(folder, String(after));
      mkdirSync(inside);
      await killedWhile(
        `world.writeNew(${JSON.stringify(inside)} + '/issued-' + round + '.zip', bytes)`,
        after,
      );
      const named = readdirSync(inside).filter((name) => name.startsWith('issued-'));
      for (const name of named)
        expect(contentOf(join(inside, name))).toBe(`${size} of n`);
      rmSync(inside, { recursive: true });
    }
  });
});
