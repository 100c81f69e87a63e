import { spawnSync } from 'node:child_process';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import fc from 'fast-check';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { pathFaults, writeBag } from '../../src/bag/index.ts';
import { bytesOf, smallBag, smallContents, toldOf } from '../support/bags.ts';
import { brokenRules, filesOfZip } from '../support/bagit-by-the-book.ts';
import { testWith } from '../support/other-program.ts';

const textIn = (zip: Uint8Array, path: string): string | undefined =>
  filesOfZip(zip)
    .find((file) => file.path === path)
    ?.bytes.toString('utf8');

describe('a bag', () => {
  test('keeps the rules of RFC 8493, read by a reader that shares nothing with the writer', async () => {
    expect(brokenRules(await smallBag())).toEqual([]);
    expect(brokenRules(await writeBag({ payload: [], info: [] }))).toEqual([]);
  });

  test('keeps them for any payload', async () => {
    const step = fc.stringMatching(/^[ -.0-9;-[\]-~äΩ−\n\r%]{1,12}$/u);
    const path = fc
      .array(step, { minLength: 1, maxLength: 3 })
      .map((steps) => steps.join('/'));
    const file = fc.record({ path, bytes: fc.uint8Array({ maxLength: 40 }) });
    await fc.assert(
      fc.asyncProperty(fc.array(file, { maxLength: 6 }), async (payload) => {
        fc.pre(pathFaults(payload.map((one) => one.path)).length === 0);
        const zip = await writeBag({ payload, info: [] });
        expect(brokenRules(zip)).toEqual([]);
        expect(await toldOf(zip)).toEqual([]);
      }),
      { numRuns: 150 },
    );
  });

  test('lays its files in order, none of them deflated', async () => {
    const files = filesOfZip(await smallBag());
    expect(files.map(({ path }) => path)).toEqual([
      'bagit.txt',
      'bag-info.txt',
      'manifest-sha256.txt',
      'tagmanifest-sha256.txt',
      'data/definition/members/b1.yaml',
      'data/definition/project.yaml',
      'data/licences/Schrift für alle.txt',
      'data/package.pdf',
      'data/results.json',
    ]);
    expect(files.every(({ method }) => method === 0)).toBe(true);
  });

  test('declares itself and sums its payload in the words of the RFC', async () => {
    const zip = await smallBag();
    expect(textIn(zip, 'bagit.txt')).toBe(
      'BagIt-Version: 1.0\nTag-File-Character-Encoding: UTF-8\n',
    );
    // 16 + 25 + 46 + 20 + 0 bytes in five files.
    expect(textIn(zip, 'bag-info.txt')).toBe(
      'Source-Organization: Aldous & Penn\nBagging-Date: 2031-04-02\nPayload-Oxum: 107.5\n',
    );
  });

  test('percent-encodes line breaks and per cent in its lists, and nothing else', async () => {
    const zip = await writeBag({
      payload: ['a\rb', 'c\nd', '5%', 'e f', 'ü~'].map((path) => ({
        path,
        bytes: bytesOf(''),
      })),
      info: [],
    });
    // SHA-256 of no bytes (FIPS 180-4): e3b0c442….
    const lines = (textIn(zip, 'manifest-sha256.txt') ?? '').split('\n').slice(0, -1);
    expect(lines.map((line) => line.slice(66))).toEqual([
      'data/5%25',
      'data/a%0Db',
      'data/c%0Ad',
      'data/e f',
      'data/ü~',
    ]);
    expect(new Set(lines.map((line) => line.slice(0, 8)))).toEqual(
      new Set(['e3b0c442']),
    );
    expect(await toldOf(zip)).toEqual([]);
  });

  test('sets a value of several lines on one', async () => {
    const zip = await writeBag({
      payload: [],
      info: [
        { label: 'External-Description', value: ' Weir\n  footbridge\t, north \n' },
      ],
    });
    expect(textIn(zip, 'bag-info.txt')).toBe(
      'External-Description: Weir footbridge , north\nPayload-Oxum: 0.0\n',
    );
  });

  test('does not depend on the order in which files are given', async () => {
    const { payload, info } = smallContents;
    expect(await writeBag({ payload: payload.toReversed(), info })).toEqual(
      await smallBag(),
    );
  });
});

describe('a bag is never written', () => {
  const empty = bytesOf('');
  test.each([
    '',
    '/etc/hosts',
    '../results.json',
    'definition/../../x',
    'definition\\x',
    'C:/x',
    'a//b',
    './a',
    'a/',
    'a\u0000b',
    'a\u001b[2Jb',
    'x'.repeat(1025),
  ])('with the unsafe path %j', async (path) => {
    await expect(
      writeBag({ payload: [{ path, bytes: empty }], info: [] }),
    ).rejects.toThrow(RangeError);
  });

  test.each([
    ['a.yaml', 'a.yaml'],
    ['B1.yaml', 'b1.yaml'],
    ['Stütze.yaml', 'Stu\u0308tze.yaml'],
    ['a', 'a/b'],
    ['A/b', 'a'],
  ])('with %j beside %j', async (one, other) => {
    const payload = [one, other].map((path) => ({ path, bytes: empty }));
    await expect(writeBag({ payload, info: [] })).rejects.toThrow(RangeError);
  });

  test.each(['', 'a:b', 'a\nb', ' a', 'Payload-Oxum', 'payload-oxum'])(
    'with a line labelled %j',
    async (label) => {
      await expect(
        writeBag({ payload: [], info: [{ label, value: 'x' }] }),
      ).rejects.toThrow(RangeError);
    },
  );
});

describe('the zip of a bag', () => {
  let folder = '';
  beforeAll(async () => {
    folder = mkdtempSync(join(tmpdir(), 'bag-'));
    writeFileSync(join(folder, 'issued.zip'), await smallBag());
  });
  afterAll(() => rmSync(folder, { recursive: true, force: true }));

  testWith('unzip', 'is tested and found without errors by another program', () => {
    const { status, stdout } = spawnSync('unzip', ['-t', join(folder, 'issued.zip')], {
      encoding: 'utf8',
    });
    expect([status, stdout]).toEqual([
      0,
      expect.stringContaining('No errors detected'),
    ]);
  });

  testWith('python3', 'is read by another language, names in UTF-8 included', () => {
    const script =
      'import sys, zipfile; z = zipfile.ZipFile(sys.argv[1]); print(z.testzip()); sys.stdout.buffer.write(("|".join(z.namelist())).encode())';
    const { stdout } = spawnSync(
      'python3',
      ['-c', script, join(folder, 'issued.zip')],
      { encoding: 'utf8' },
    );
    expect(stdout).toMatch(/^None\s/);
    expect(stdout).toContain('|data/licences/Schrift für alle.txt|');
  });

  test('has equal bytes in every time zone, also where the zone changes in the run', () => {
    // The built program, because only a process of its own can change its zone.
    const door = new URL('../../dist/bag/index.js', import.meta.url).href;
    const script = `
      import { createHash } from 'node:crypto';
      const { writeBag } = await import(${JSON.stringify(door)});
      const found = new Set();
      const others = process.env.TZ === 'UTC' ? Intl.supportedValuesOf('timeZone') : [];
      for (const zone of [process.env.TZ, ...others]) {
        process.env.TZ = zone;
        const zip = await writeBag({ payload: [{ path: 'a', bytes: new Uint8Array(3) }], info: [] });
        found.add(createHash('sha256').update(zip).digest('hex'));
      }
      console.log([...found].join());`;
    const outcomes = ['UTC', 'Pacific/Kiritimati', 'Pacific/Pago_Pago'].map((TZ) => {
      const { stdout, stderr } = spawnSync(
        process.execPath,
        ['--input-type=module', '-e', script],
        {
          encoding: 'utf8',
          env: { ...process.env, TZ },
        },
      );
      return stderr + stdout;
    });
    expect(outcomes[0]).toMatch(/^[0-9a-f]{64}\n$/);
    expect(new Set(outcomes).size).toBe(1);
  });
});
