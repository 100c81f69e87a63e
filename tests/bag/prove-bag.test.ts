import { createHash } from 'node:crypto';
import fc from 'fast-check';
import { beforeAll, describe, expect, test } from 'vitest';
import { bytesOf, smallBag, toldOf } from '../support/bags.ts';
import { filesOfZip } from '../support/bagit-by-the-book.ts';
import { zipByHand, type HandFile } from '../support/zip-by-hand.ts';

let zip: Uint8Array = new Uint8Array();
beforeAll(async () => {
  zip = await smallBag();
});

type Change = (text: string) => string;

/** The bag laid anew by hand with some files changed, left out (undefined) or added. */
function laidAnew(changes: Readonly<Record<string, Change | undefined>>): Uint8Array {
  const files = filesOfZip(zip).flatMap(({ path, bytes }): readonly HandFile[] => {
    if (!Object.hasOwn(changes, path)) return [{ name: path, bytes }];
    const change = changes[path];
    return change === undefined
      ? []
      : [{ name: path, bytes: bytesOf(change(bytes.toString('utf8'))) }];
  });
  const known = new Set(files.map(({ name }) => name));
  const added = Object.entries(changes).flatMap(
    ([name, change]): readonly HandFile[] =>
      known.has(name) || change === undefined
        ? []
        : [{ name, bytes: bytesOf(change('')) }],
  );
  return zipByHand([...files, ...added]);
}

/** Findings as `kind path`. */
const findings = async (
  changes: Parameters<typeof laidAnew>[0],
): Promise<readonly string[]> =>
  (await toldOf(laidAnew(changes))).map((found) =>
    'kind' in found ? `${found.kind} ${found.path ?? ''}`.trim() : found.message,
  );

const sha = (text: string): string => createHash('sha256').update(text).digest('hex');
const manifest = 'manifest-sha256.txt';
const tags = 'tagmanifest-sha256.txt';

describe('one fault gives one finding', () => {
  test.each<readonly [string, Parameters<typeof laidAnew>[0], string]>([
    ['nothing', {}, ''],
    [
      'a file changed',
      { 'data/package.pdf': (text) => text.replace('foot', 'road') },
      'altered data/package.pdf',
    ],
    [
      'a file made longer',
      { 'data/results.json': (text) => `${text} ` },
      'altered data/results.json',
    ],
    [
      'a file taken out',
      { 'data/results.json': undefined },
      'missing data/results.json',
    ],
    ['a file put in', { 'data/extra.pdf': () => 'x' }, 'added data/extra.pdf'],
    ['a file beside the payload', { 'notes.txt': () => 'x' }, 'added notes.txt'],
    ['a list of files to fetch', { 'fetch.txt': () => 'x' }, 'added fetch.txt'],
    ['a tag file taken out', { 'bag-info.txt': undefined }, 'missing bag-info.txt'],
    ['the manifest taken out', { [manifest]: undefined }, `missing ${manifest}`],
    ['the tag manifest taken out', { [tags]: undefined }, `missing ${tags}`],
    [
      'another version declared',
      { 'bagit.txt': (text) => text.replace('1.0', '0.97') },
      'declaration bagit.txt',
    ],
    [
      'a blank more in bagit.txt',
      { 'bagit.txt': (text) => `${text}\n` },
      'declaration bagit.txt',
    ],
    [
      'a line changed in bag-info.txt',
      { 'bag-info.txt': (text) => text.replace('2031', '2013') },
      'altered bag-info.txt',
    ],
    [
      'the manifest turned round',
      { [manifest]: (text) => text.split('\n').reverse().join('\n') },
      `manifest ${manifest}`,
    ],
    [
      'the manifest in capitals',
      {
        [manifest]: (text) =>
          text.replace(/^[0-9a-f]{64}/gm, (sum) => sum.toUpperCase()),
      },
      `manifest ${manifest}`,
    ],
    [
      'a blank at its end',
      { [manifest]: (text) => `${text} ` },
      `manifest ${manifest}`,
    ],
    [
      'a line of it taken out',
      { [manifest]: (text) => text.slice(text.indexOf('\n') + 1) },
      `manifest ${manifest}`,
    ],
    [
      'Windows line ends in the tag manifest',
      { [tags]: (text) => text.replaceAll('\n', '\r\n') },
      `manifest ${tags}`,
    ],
    [
      'a line of that taken out',
      { [tags]: (text) => text.slice(text.indexOf('\n') + 1) },
      `manifest ${tags}`,
    ],
    [
      'a byte order mark in it',
      { [tags]: (text) => `\ufeff${text}` },
      `manifest ${tags}`,
    ],
  ])('%s', async (_, changes, expected) => {
    expect((await findings(changes)).join('; ')).toBe(expected);
  });

  test('a file renamed is one missing and one added', async () => {
    expect(
      await findings({
        'data/results.json': undefined,
        'data/result.json': () => '{ "format": 1 }\n',
      }),
    ).toEqual(['missing data/results.json', 'added data/result.json']);
  });

  test('a file changed together with its line in the manifest is told by the tag manifest', async () => {
    const was = '%PDF-1.7 of a footbridge\n';
    const now = '%PDF-1.7 of a roadbridge\n';
    const found = await findings({
      'data/package.pdf': () => now,
      [manifest]: (text) => text.replace(sha(was), sha(now)),
    });
    expect(found).toEqual([`altered ${manifest}`]);
  });

  test('a wrong sum of the payload is told although every digest is right', async () => {
    const infoText =
      filesOfZip(zip)
        .find(({ path }) => path === 'bag-info.txt')
        ?.bytes.toString() ?? '';
    for (const [other, message] of [
      [
        infoText.replace('107.5', '107.6'),
        'bag-info.txt says Payload-Oxum: 107.6; the payload holds 107.5',
      ],
      [
        infoText.replace(/Payload.*\n/, ''),
        'bag-info.txt does not say how large the payload is (Payload-Oxum: 107.5)',
      ],
    ] as const) {
      const forged = laidAnew({
        'bag-info.txt': () => other,
        [tags]: (text) => text.replace(sha(infoText), sha(other)),
      });
      expect(await toldOf(forged)).toEqual([
        { kind: 'declaration', path: 'bag-info.txt', message },
      ]);
    }
  });

  test('the sentence names both digests of a file that was changed', async () => {
    const [found] = await toldOf(laidAnew({ 'data/results.json': () => '{}' }));
    expect(found?.message).toBe(
      `data/results.json is not what was written: its SHA-256 is ${sha('{}')}, ${manifest} says ${sha('{ "format": 1 }\n')}`,
    );
  });

  test('a deflated file that does not unpack is altered, and is told of once', async () => {
    const files = filesOfZip(zip).map(({ path, bytes }): HandFile => {
      if (path !== 'data/package.pdf') return { name: path, bytes };
      return { name: path, bytes, packed: bytesOf('no such thing') };
    });
    expect(await toldOf(zipByHand(files))).toEqual([
      {
        kind: 'altered',
        path: 'data/package.pdf',
        message: 'data/package.pdf cannot be unpacked as the zip says',
      },
    ]);
  });
});

describe('every byte of the zip counts', () => {
  const flipped = (at: number, mask: number): Uint8Array =>
    zip.map((byte, index) => (index === at ? byte ^ mask : byte));

  test('one bit turned anywhere is told', async () => {
    const silent: number[] = [];
    for (let at = 0; at < zip.length; at += 1)
      if ((await toldOf(flipped(at, 1 << (at % 8)))).length === 0) silent.push(at);
    expect(silent).toEqual([]);
  });

  test('any byte made any other is told', async () => {
    const at = fc.nat({ max: 10_000 });
    await fc.assert(
      fc.asyncProperty(at, fc.integer({ min: 1, max: 255 }), async (place, mask) => {
        expect(await toldOf(flipped(place % zip.length, mask))).not.toEqual([]);
      }),
      { numRuns: 2_000 },
    );
  });

  test('a flip within a file is told by that file alone', async () => {
    const at = Buffer.from(zip).indexOf('footbridge\n');
    expect(await toldOf(flipped(at, 0x20))).toMatchObject([
      { kind: 'altered', path: 'data/package.pdf' },
    ]);
  });

  test('a flip around the files says that each of them is intact', async () => {
    // The date in front of the first file, and its mode in the directory.
    const directory = Buffer.from(zip).indexOf('PK\x01\x02');
    for (const [place, what] of [
      [12, 'what stands in front of bagit.txt differs at byte 12'],
      [
        directory + 40,
        `the line for bagit.txt in the directory of the zip differs at byte ${directory + 40}`,
      ],
    ] as const)
      expect(await toldOf(flipped(place, 1))).toEqual([
        {
          kind: 'container',
          message: `every file in the bag is intact, but the zip around them is not as it was written: ${what}`,
        },
      ]);
  });

  test('bytes cut off, put in front, put behind or in between are told', async () => {
    const bytes = [...zip];
    for (let length = 0; length < zip.length; length += 11)
      expect(await toldOf(zip.slice(0, length))).not.toEqual([]);
    for (const at of [0, 1, 50, 100, 500, zip.length - 22, zip.length])
      expect(await toldOf(Uint8Array.from(bytes.toSpliced(at, 0, 0)))).not.toEqual([]);
  });

  test('a gap that the directory leaves between two files is told', async () => {
    // Everything behind the first file moves by eight bytes, and every offset says so.
    const first = 30 + 9 + 54;
    const moved = Buffer.concat([
      zip.slice(0, first),
      Buffer.alloc(8),
      zip.slice(first),
    ]);
    const end = moved.length - 22;
    const directory = moved.readUInt32LE(end + 16) + 8;
    moved.writeUInt32LE(directory, end + 16);
    let at = directory;
    for (let file = 0; file < moved.readUInt16LE(end + 10); file += 1) {
      if (file > 0) moved.writeUInt32LE(moved.readUInt32LE(at + 42) + 8, at + 42);
      at += 46 + moved.readUInt16LE(at + 28);
    }
    expect(await toldOf(Uint8Array.from(moved))).toMatchObject([{ kind: 'container' }]);
  });
});
