import { describe, expect, test } from 'vitest';
import { opened, smallBag, toldOf } from '../support/bags.ts';
import { filesOfZip } from '../support/bagit-by-the-book.ts';
import { zipByHand, type HandFile } from '../support/zip-by-hand.ts';

const declaration: HandFile = {
  name: 'bagit.txt',
  bytes: 'BagIt-Version: 1.0\nTag-File-Character-Encoding: UTF-8\n',
};

/** What is told of a bag with these files beside its declaration. */
async function refusalOf(...files: readonly HandFile[]): Promise<string> {
  const { bag, diagnostics } = await opened(zipByHand([declaration, ...files]));
  expect(bag).toBeUndefined();
  return diagnostics.map(({ code, message }) => `${code}: ${message}`).join('\n');
}

const refused = (reason: string): string =>
  `bag-refused: issued.zip is refused: ${reason}`;

test('a zip made by hand without a fault is opened, so that the faults below are what is refused', async () => {
  const { bag } = await opened(
    zipByHand([declaration, { name: 'data/a', bytes: 'x' }]),
  );
  expect(bag?.files.map(({ path }) => path)).toEqual(['bagit.txt', 'data/a']);
  const again = filesOfZip(await smallBag()).map(({ path, bytes }) => ({
    name: path,
    bytes,
  }));
  // Two writers that share nothing lay the same zip.
  expect(zipByHand(again)).toEqual(await smallBag());
  expect(await toldOf(zipByHand(again.toReversed()))).toMatchObject([
    { kind: 'container' },
  ]);
});

describe('a bag is refused for a name', () => {
  test.each([
    ['../../etc/cron.d/x', 'leads out of the bag by “..”'],
    ['data/../../x', 'leads out of the bag by “..”'],
    ['data/..', 'leads out of the bag by “..”'],
    ['/etc/passwd', 'is absolute'],
    ['data//etc/passwd', 'holds an empty step or “.”'],
    ['C:/Windows/x', 'begins with the letter of a drive'],
    ['data/c:x', 'begins with the letter of a drive'],
    ['data\\..\\x', 'holds a backslash, which some systems read as a folder'],
    ['', 'is empty'],
    ['/', 'is absolute'],
    [`data/${'x'.repeat(1100)}`, 'is longer than 1024 bytes'],
  ])('%s', async (name, reason) => {
    expect(await refusalOf({ name, bytes: '' })).toBe(
      refused(`its file ${name} ${reason}`),
    );
  });

  test('with characters that a terminal would obey, which the message does not repeat', async () => {
    expect(await refusalOf({ name: 'data/\u001b[2Jx', bytes: '' })).toBe(
      refused('its file data/\\u001b[2Jx holds a character that cannot be shown'),
    );
  });

  test('that is no text in UTF-8', async () => {
    const name = Buffer.from([0x64, 0xff, 0xfe]);
    expect(await refusalOf({ name, bytes: '' })).toContain(
      'holds a character that cannot be shown',
    );
  });

  test('that an extra field replaces by a worse one', async () => {
    const { crc32 } = await import('node:zlib');
    const name = '../x';
    // Info-ZIP Unicode Path, PKWARE APPNOTE 4.6.9.
    const extra = Buffer.alloc(9);
    extra.writeUInt16LE(0x7075, 0);
    extra.writeUInt16LE(5 + name.length, 2);
    extra.writeUInt8(1, 4);
    extra.writeUInt32LE(crc32('data/a'), 5);
    const field = Buffer.concat([extra, Buffer.from(name)]);
    expect(await refusalOf({ name: 'data/a', bytes: '', extra: field })).toBe(
      refused('its file ../x leads out of the bag by “..”'),
    );
  });

  test.each([
    ['data/a', 'data/a', 'stands there twice'],
    [
      'data/A.yaml',
      'data/a.yaml',
      'is the same as data/A.yaml on a disk that ignores case or the form of accents',
    ],
    [
      'data/Stütze',
      'data/Stu\u0308tze',
      'is the same as data/Stütze on a disk that ignores case or the form of accents',
    ],
  ])('%s and %s', async (one, other, reason) => {
    expect(
      await refusalOf({ name: one, bytes: 'x' }, { name: other, bytes: 'y' }),
    ).toBe(refused(`its file ${other} ${reason}`));
  });

  test('that is a file and a folder', async () => {
    expect(
      await refusalOf({ name: 'data/a/b', bytes: 'x' }, { name: 'data/a', bytes: 'y' }),
    ).toBe(refused('its file data/a is a file and the folder of data/a/b'));
  });

  test('that is another in front of the bytes', async () => {
    expect(await refusalOf({ name: 'data/a', bytes: 'x', localName: 'data/b' })).toBe(
      refused('its file data/a has another name where its bytes begin'),
    );
  });
});

describe('a bag is refused for what its files are', () => {
  test.each([
    [{ mode: 0o120777 }, 'is a link'],
    [{ mode: 0o010644 }, 'is marked as something else than an ordinary file'],
    [{ mode: 0o040755 }, 'is marked as something else than an ordinary file'],
    [{ flags: 0x801, isDeflated: true }, 'is encrypted'],
    [{ flags: 0x2800 }, 'is encrypted'],
    [{ method: 12 }, 'is packed by a method that is not read, number 12'],
  ] satisfies readonly (readonly [Partial<HandFile>, string])[])(
    '%j',
    async (fault, reason) => {
      expect(
        await refusalOf({ name: 'data/a', bytes: '/etc/passwd!', ...fault }),
      ).toContain(reason);
    },
  );

  test('strongly encrypted ones', async () => {
    expect(await refusalOf({ name: 'data/a', bytes: 'x', flags: 0x841 })).toBe(
      refused('it is encrypted'),
    );
  });

  test('a folder that holds bytes', async () => {
    expect(await refusalOf({ name: 'data/a/', bytes: 'x', mode: 0 })).toBe(
      refused('its file data/a is a folder and holds bytes'),
    );
  });
});

describe('a bag is refused for its sizes', () => {
  const blanks = new Uint8Array(3_000_000);

  test('that differ in front of the bytes', async () => {
    expect(
      await refusalOf({
        name: 'data/a',
        bytes: 'xyz',
        isDeflated: true,
        claimedInFront: 2,
      }),
    ).toBe(
      refused(
        'its file data/a has one size in the directory and another where its bytes begin',
      ),
    );
  });

  test('that differ packed and unpacked where nothing is packed', async () => {
    expect(await refusalOf({ name: 'data/a', bytes: 'xyz', claimed: 30 })).toBe(
      refused('a file that is not packed gives two sizes'),
    );
  });

  test('that grow without end', async () => {
    expect(await refusalOf({ name: 'data/a', bytes: blanks, isDeflated: true })).toBe(
      refused('its file data/a would unpack to more than 200 times its size'),
    );
  });

  test('that sum up to more than a bag may hold', async () => {
    const large = {
      bytes: new Uint8Array(50_000),
      isDeflated: true,
      claimed: 0xffff_fff0,
    };
    expect(await refusalOf({ name: 'data/a', ...large })).toMatch(
      /would unpack to more than 200 times/,
    );
    const many = Array.from({ length: 22 }, (_, file) => ({
      name: `data/${file}`,
      bytes: '',
      packed: new Uint8Array(1_000_000),
      claimed: 199_000_000,
    }));
    expect(await refusalOf(...many)).toMatch(
      /its files hold 4378000054 bytes, and more than 4294967295 are refused/,
    );
  });

  test('whose bytes are shared by several files', async () => {
    expect(
      await refusalOf(
        { name: 'data/a', bytes: 'xyz' },
        { name: 'data/b', localName: 'data/a', bytes: 'xyz', offset: 93 },
      ),
    ).toMatch(/another name|shares bytes/);
    // A file whose own bytes hold a whole second file with its header, so that each looks right by itself.
    const inner = zipByHand([{ name: 'data/b', bytes: 'inner' }]).slice(0, 41);
    expect(
      await refusalOf(
        { name: 'data/a', bytes: inner },
        { name: 'data/b', bytes: 'inner', offset: 93 + 36 },
      ),
    ).toBe(refused('its file data/a shares bytes with what follows it'));
  });

  test('that lie: a file that unpacks to more or less than is claimed is never given', async () => {
    for (const claimed of [10, 2_000]) {
      const { bag } = await opened(
        zipByHand([
          declaration,
          { name: 'data/a', bytes: 'z'.repeat(1_000), isDeflated: true, claimed },
        ]),
      );
      await expect(bag!.read('data/a')).rejects.toThrow();
      await expect(bag!.digestOf('data/a')).rejects.toThrow();
    }
  });

  test('of which there are too many', async () => {
    const { diagnostics } = await opened(zipByHand([declaration], 10_001));
    expect(diagnostics[0]?.message).toBe(
      'issued.zip is refused: it holds 10001 files, and more than 10000 are refused',
    );
  });
});
