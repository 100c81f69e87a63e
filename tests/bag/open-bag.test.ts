import { execFileSync } from 'node:child_process';
import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { openBag, payloadOf, proveBag, writeBag } from '../../src/bag/index.ts';
import { digest, diskWorld, memoryWorld, type World } from '../../src/world/index.ts';
import { filesOfZip } from '../support/bagit-by-the-book.ts';
import { bytesOf, opened, smallBag, smallContents } from '../support/bags.ts';
import { testWith } from '../support/other-program.ts';
import { zipByHand } from '../support/zip-by-hand.ts';

let folder = '';
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'bag-'));
});
afterEach(() => rmSync(folder, { recursive: true, force: true }));

describe('an open bag', () => {
  test('gives files, lines, bytes and digests, on disk as in memory', async () => {
    const zip = await smallBag();
    const path = join(folder, 'issued.zip');
    writeFileSync(path, zip);
    for (const [world, at] of [
      [diskWorld(), path],
      [memoryWorld({ 'issued.zip': zip }), 'issued.zip'],
    ] as const) {
      const { value: bag } = await openBag(world, at);
      expect(bag?.files.at(-2)).toEqual({ path: 'data/package.pdf', size: 25 });
      expect(bag?.info).toEqual([
        ...smallContents.info,
        { label: 'Payload-Oxum', value: '107.5' },
      ]);
      const bytes = bytesOf('%PDF-1.7 of a footbridge\n');
      expect(await bag?.read('data/package.pdf')).toEqual(bytes);
      expect(await bag?.digestOf('data/package.pdf')).toBe(digest(bytes));
      expect(await bag?.read('data/licences/Schrift für alle.txt')).toEqual(
        new Uint8Array(),
      );
      expect(await bag?.read('package.pdf')).toBeUndefined();
      expect(await bag?.digestOf('__proto__')).toBeUndefined();
      expect(await proveBag(bag!)).toEqual([]);
      bag?.close();
    }
  });

  test('is read in pieces: a file of 40 MB never asks for more than a megabyte at once', async () => {
    const bytes = new Uint8Array(40_000_000).fill(7);
    const zip = await writeBag({ payload: [{ path: 'package.pdf', bytes }], info: [] });
    let greatest = 0;
    const inner = memoryWorld({ 'issued.zip': zip });
    const watching: World = {
      ...inner,
      open: (path) => {
        const answer = inner.open(path);
        if (!('file' in answer)) return answer;
        const { file } = answer;
        return {
          file: {
            ...file,
            readAt: (offset, length) => {
              greatest = Math.max(greatest, length);
              return file.readAt(offset, length);
            },
          },
        };
      },
    };
    const { value: bag } = await openBag(watching, 'issued.zip');
    expect(await proveBag(bag!)).toEqual([]);
    expect(greatest).toBeLessThanOrEqual(1_048_576);
  });

  test('gives a folder of its payload, which is a world of memory for the project in it', async () => {
    const { bag } = await opened(await smallBag());
    const { value } = await payloadOf(bag!, 'definition');
    const world = memoryWorld(value ?? {});
    expect(world.list('.')).toEqual(['members/', 'project.yaml']);
    expect(world.read('members/b1.yaml')).toEqual({
      bytes: bytesOf('mark: B1\nkind: beam\n'),
    });
    expect(await payloadOf(bag!, 'nowhere')).toEqual({ value: {}, diagnostics: [] });
    expect(Object.keys((await payloadOf(bag!, 'def')).value ?? {})).toEqual([]);
  });

  test('gives no folder that is too large for the memory', async () => {
    const { bag } = await opened(await smallBag());
    const large = {
      ...bag!,
      files: [{ path: 'data/definition/a.png', size: 300_000_000 }],
    };
    const { value, diagnostics } = await payloadOf(large, 'definition');
    expect(value).toBeUndefined();
    expect(diagnostics[0]?.code).toBe('bag-refused');
  });

  testWith(
    'zip',
    'may have been packed anew, deflated and with folders: only the container differs',
    async () => {
      for (const { path, bytes } of filesOfZip(await smallBag())) {
        mkdirSync(dirname(join(folder, 'bag', path)), { recursive: true });
        writeFileSync(join(folder, 'bag', path), bytes);
      }
      execFileSync('zip', ['-q', '-r', '../again.zip', '.'], {
        cwd: join(folder, 'bag'),
        env: { ...process.env, LC_ALL: 'C.UTF-8' },
      });
      const { value: bag, diagnostics } = await openBag(
        diskWorld(),
        join(folder, 'again.zip'),
      );
      expect(diagnostics).toEqual([]);
      const findings = await proveBag(bag!);
      expect(findings.map(({ kind }) => kind)).toEqual(['container']);
      expect(findings[0]?.message).toMatch(/^every file in the bag is intact, but/);
      bag?.close();
    },
  );
});

describe('what is no bag', () => {
  const told = async (zip: Uint8Array): Promise<readonly (readonly string[])[]> =>
    (await opened(zip)).diagnostics.map(({ code, message }) => [code, message]);

  test('is told so in words of its own', async () => {
    expect(await told(bytesOf('%PDF-1.7\n'))).toEqual([
      ['not-a-bag', 'issued.zip is no bag: it is no zip'],
    ]);
    expect(await told(new Uint8Array())).toEqual([
      ['not-a-bag', 'issued.zip is no bag: it is no zip'],
    ]);
    expect(await told(zipByHand([{ name: 'package.pdf', bytes: 'x' }]))).toEqual([
      ['not-a-bag', 'issued.zip is no bag: its zip has no bagit.txt at its root'],
    ]);
  });

  test('is told to be cut short wherever it is cut', async () => {
    const zip = await smallBag();
    for (let length = 2; length < zip.length; length += 7)
      expect(await told(zip.slice(0, length))).toEqual([
        [
          'bag-unreadable',
          'issued.zip cannot be read: its zip is cut short, or damaged at its end',
        ],
      ]);
  });

  test('is not there, or is a folder, or fails under the reader', async () => {
    const message = async (world: World, path: string): Promise<readonly string[]> =>
      (await openBag(world, path)).diagnostics.map(
        ({ code, message }) => `${code}: ${message}`,
      );
    expect(await message(memoryWorld({}), 'gone.zip')).toEqual([
      'bag-unreadable: gone.zip cannot be read: there is no such file',
    ]);
    expect(await message(memoryWorld({ 'a/b': '' }), 'a')).toEqual([
      'bag-unreadable: a cannot be read: it is a folder',
    ]);
    const failing: World = {
      ...memoryWorld({}),
      open: () => ({
        file: {
          size: 5000,
          readAt: () => {
            throw new Error('EIO');
          },
          close: () => undefined,
        },
      }),
    };
    expect(await message(failing, 'a')).toEqual([
      'bag-unreadable: a cannot be read: its zip cannot be read',
    ]);
  });
});
