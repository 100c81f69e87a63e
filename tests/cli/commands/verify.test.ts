import { beforeAll, describe, expect, test } from 'vitest';
import { memoryWorld, type MemoryWorld } from '../../../src/world/index.ts';
import { archivedSluice } from '../../support/archived-sluice.ts';
import { ran } from '../../support/command-line.ts';

let bag: Uint8Array;
let damaged: Uint8Array;
beforeAll(async () => {
  bag = (await archivedSluice()).bytes;
  damaged = Uint8Array.from(bag);
  const at = Buffer.from(damaged).indexOf('"stable"');
  damaged[at + 3] = damaged[at + 3]! ^ 1;
});

/** An archive of four bags in two folders, the second of which may be damaged. */
function archive(second: Uint8Array = bag): MemoryWorld {
  const names = ['1', '10', '2'].map((name) => `archive/${name}.zip`);
  return memoryWorld({
    ...Object.fromEntries(names.map((name) => [name, bag])),
    'archive/2.zip': second,
    'archive/b/1.ZIP': bag,
    'archive/readme.txt': 'bags',
    'one.zip': bag,
    'empty/notes.txt': '',
  });
}

const lines = (text: string): readonly string[] => text.trimEnd().split('\n');

describe('verify', () => {
  test('says of a whole bag in one line that it is intact, and writes nothing', async () => {
    const world = archive();
    const count = world.files.size;
    const { code, out, err } = await ran(['verify', 'one.zip'], world);
    expect([code, err]).toEqual([0, '']);
    expect(lines(out)).toEqual(['intact          2031-207 A        one.zip']);
    expect(world.files.size).toBe(count);
  });

  test('says of a damaged bag what is damaged, and ends with 1', async () => {
    const { code, out } = await ran(['verify', 'archive/2.zip'], archive(damaged));
    expect(code).toBe(1);
    expect(lines(out)[0]).toMatch(/^damaged {9}2031-207 A {8}archive\/2\.zip$/u);
    expect(lines(out)[1]).toMatch(/^ {4}data\/results\.json: /u);
  });

  test('searches a folder in natural order and ends with a count', async () => {
    const { code, out } = await ran(['verify', 'archive'], archive(damaged));
    expect(code).toBe(1);
    const paths = lines(out).flatMap((line) => /archive\/\S+$/u.exec(line)?.[0] ?? []);
    expect(paths).toEqual([
      ...['1', '2', '10'].map((name) => `archive/${name}.zip`),
      'archive/b/1.ZIP',
    ]);
    expect(lines(out).at(-1)).toBe('4 verified: 3 intact, 1 damaged');
  });

  test('quiet, says nothing of what is intact', async () => {
    const all = await ran(['verify', 'archive', '--quiet'], archive());
    expect(all).toEqual({ code: 0, out: '', err: '' });
    const some = await ran(['verify', 'archive', '--quiet'], archive(damaged));
    expect(some.out).not.toMatch(/^intact/mu);
    expect(some.out).toMatch(/^damaged/mu);
  });

  test('every bag falls to exactly one share, wherever the folder lies', async () => {
    const shares = ['1/3', '2/3', '3/3'];
    const told = await Promise.all(
      shares.map((shard) => ran(['verify', 'archive', '--shard', shard], archive())),
    );
    const paths = told.flatMap(({ out }) => out.match(/archive\/\S+$/gmu) ?? []);
    expect(new Set(paths).size).toBe(4);
    expect(paths).toHaveLength(4);
    expect(lines(told[0]!.out).at(-1)).toMatch(/^shard 1 of 3, \d+ of 4 verified/u);
    const moved = memoryWorld(
      Object.fromEntries(
        [...archive().files].map(([path, bytes]) => [`mnt/${path}`, bytes]),
      ),
    );
    const there = await ran(['verify', 'mnt/archive', '--shard', '1/3'], moved);
    expect(there.out.replaceAll('mnt/', '')).toBe(told[0]!.out);
  });

  test('as JSON, prints every verification with a summary', async () => {
    const { code, out } = await ran(
      ['verify', 'one.zip', 'archive/2.zip', 'gone.zip', '--json'],
      archive(damaged),
    );
    expect(code).toBe(1);
    expect(JSON.parse(out)).toMatchObject({
      format: 1,
      shard: null,
      verifications: [
        { path: 'one.zip', verdict: 'intact', identity: { number: '2031-207' } },
        { path: 'archive/2.zip', verdict: 'damaged' },
        { path: 'gone.zip', verdict: 'unreadable' },
      ],
      failed: [],
      summary: { intact: 1, damaged: 1, unreadable: 1, differs: 0, failed: 0 },
    });
  });

  test('shows on a terminal how far it is', async () => {
    let clock = 0;
    const { err } = await ran(['verify', 'archive', '--quiet'], archive(), {
      isTerminal: true,
      now: () => (clock += 1000),
    });
    expect(err).toBe('');
    const told = await ran(['verify', 'archive'], archive(), {
      isTerminal: true,
      now: () => (clock += 1000),
    });
    expect(told.err).toContain('3 of 4 verified');
  });

  test.each([
    [[], 'verify needs a bag, a bound PDF or a folder of bags'],
    [['empty'], 'there is no bag (.zip) in or below empty'],
    [['one.zip', '--shard', '4/3'], '--shard takes a share such as 3/16'],
    [['one.zip', '--shard', '0/3'], '--shard takes a share such as 3/16'],
    [['one.zip', '--shard', 'all'], '--shard takes a share such as 3/16'],
    [['one.zip', '--jobs', '0'], '--jobs takes a whole number'],
  ])('refuses %j', async (args, words) => {
    const { code, out, err } = await ran(['verify', ...args], archive());
    expect([code, out]).toEqual([1, '']);
    expect(err).toContain(words);
  });
});
