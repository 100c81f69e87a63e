import { beforeAll, describe, expect, test } from 'vitest';
import {
  verify,
  type Archived,
  type Verification,
} from '../../../src/archive/index.ts';
import { memoryWorld, type World } from '../../../src/world/index.ts';
import {
  archivedSluice,
  forged,
  payloadIn,
  program,
  sluiceFiles,
} from '../../support/archived-sluice.ts';

let archived: Archived;
let payload: ReadonlyMap<string, Uint8Array>;
beforeAll(async () => {
  archived = await archivedSluice();
  payload = await payloadIn(archived.bytes);
});

const text = (content: Uint8Array | undefined): string =>
  new TextDecoder().decode(content);
const bytes = (content: string): Uint8Array => new TextEncoder().encode(content);

/** Verifies bytes as a file of a name, by a version. */
async function verified(
  content: Uint8Array,
  path: string = 'a.zip',
  version: string = program.version,
): Promise<Verification> {
  return await verify(memoryWorld({ [path]: content }), path, { ...program, version });
}

/** Verifies the bag forged: texts of its payload changed, every list and digest put right. */
async function verifiedForged(
  changes: Readonly<Record<string, (content: string) => string>>,
): Promise<Verification> {
  return await verified(
    await forged(archived.bytes, (files) => {
      for (const [path, change] of Object.entries(changes))
        files.set(path, bytes(change(text(files.get(path)))));
    }),
  );
}

describe('verifying a bag', () => {
  test('finds one that was just archived intact, every figure computed the same', async () => {
    const found = await verified(archived.bytes, 'a.zip', '0.2.0');
    expect(found).toMatchObject({
      path: 'a.zip',
      kind: 'bag',
      verdict: 'intact',
      sha256: archived.sha256,
      identity: {
        number: '2031-207',
        title: 'Sluice house',
        revision: 'A',
        status: 'issued',
      },
      versions: { issued: '0.1.0', present: '0.2.0' },
      damage: [],
      differences: [],
      compared: { greatest: 0 },
      remarks: [],
    });
    expect(found.compared?.figures).toBeGreaterThan(100);
    expect(found).not.toHaveProperty('signed');
  });

  test('tells a damaged one by its number, and what is damaged', async () => {
    const damaged = Uint8Array.from(archived.bytes);
    // The results are stored as they are: a word of theirs stands in the zip.
    const at = Buffer.from(damaged).indexOf('"stable"');
    damaged[at + 3] = damaged[at + 3]! ^ 1;
    expect(await verified(damaged)).toMatchObject({
      verdict: 'damaged',
      identity: { number: '2031-207', revision: 'A' },
      damage: [{ path: 'data/results.json' }],
      differences: [],
    });
  });

  test('works nothing again of what is damaged', async () => {
    const world = memoryWorld({ 'a.zip': archived.bytes.subarray(0, -1) });
    const found = await verify(world, 'a.zip', program);
    expect(found).toMatchObject({ verdict: 'damaged', kind: 'bag' });
    expect(found).not.toHaveProperty('compared');
  });
});

describe('what is inside the PDF of a bag', () => {
  test('must be the same as what lies beside it', async () => {
    const found = await verifiedForged({
      'definition/members/b1.yaml': (yaml) => yaml.replace('12 ft', '13 ft'),
      'results.json': (json) => `${json}\n`,
    });
    expect(found).toMatchObject({
      verdict: 'damaged',
      damage: [{ path: 'members/b1.yaml' }, { path: 'results.json' }],
    });
  });

  test('must be there, and nothing else may lie beside it', async () => {
    const more = await forged(archived.bytes, (files) => {
      files.set('definition/members/b2.yaml', files.get('definition/members/b1.yaml')!);
    });
    expect((await verified(more)).damage).toEqual([
      {
        path: 'members/b2.yaml',
        message: 'it lies beside the PDF and does not travel inside it',
      },
    ]);
    const less = await forged(archived.bytes, (files) => {
      files.delete('definition/loads.yaml');
    });
    expect((await verified(less)).damage).toEqual([
      {
        path: 'loads.yaml',
        message: 'it travels inside the PDF and does not lie beside it',
      },
    ]);
  });

  test.each(['package.pdf', 'results.json', 'record.json'])(
    'cannot be compared without %s',
    async (path) => {
      const without = await forged(archived.bytes, (files) => files.delete(path));
      const found = await verified(without);
      expect(found.verdict).toBe('damaged');
      expect(found.damage[0]?.path).toContain(path);
    },
  );

  test('a package that is no PDF is damage', async () => {
    const found = await verifiedForged({ 'package.pdf': () => 'a page' });
    expect(found.damage).toEqual([
      {
        path: 'data/package.pdf',
        message: 'it cannot be read: the file does not begin as a PDF does',
      },
    ]);
  });
});

describe('the record of a bag', () => {
  test.each([
    ['number', '"number": "2031-207"', '"number": "2031-208"'],
    ['title', '"title": "Sluice house"', '"title": "Sluice"'],
  ])('must give the %s of the results', async (what, was, is) => {
    const found = await verifiedForged({
      'record.json': (json) => json.replace(was, is),
    });
    expect(found.verdict).toBe('damaged');
    expect(found.damage[0]).toMatchObject({ path: 'data/record.json' });
    expect(found.damage[0]?.message).toContain(`the ${what} `);
  });

  test('must give the status of the definition', async () => {
    const found = await verifiedForged({
      'record.json': (json) => json.replace('"status": "issued"', '"status": "void"'),
    });
    expect(found).toMatchObject({
      verdict: 'damaged',
      damage: [
        { message: 'the record gives the status void, and project.yaml issued' },
      ],
    });
  });

  test('must be one', async () => {
    const found = await verifiedForged({ 'record.json': () => '{ "format": 2 }' });
    expect(found).toMatchObject({
      verdict: 'damaged',
      damage: [{ path: 'data/record.json' }],
    });
  });
});

describe('a package archived as it is', () => {
  test('is compared as far as it goes, and its reasons are told', async () => {
    const asIs = await archivedSluice(
      { 'members/b2.yaml': 'mark: B2\nkind: beam\npoints: { A: 0 ft, B: 9 ft }\n' },
      { isAsIs: true },
    );
    const found = await verified(asIs.bytes);
    expect(found).toMatchObject({ verdict: 'intact', differences: [] });
    expect(found.remarks.length).toBeGreaterThan(0);
    expect(found.remarks[0]).toMatch(/^archived as it is: Member B2: /u);
  });

  test('without a record of revisions it has none', async () => {
    const project = sluiceFiles['project.yaml']!.replace(/revisions: .*\n/u, '');
    const asIs = await archivedSluice({ 'project.yaml': project }, { isAsIs: true });
    expect(await verified(asIs.bytes)).toMatchObject({
      verdict: 'intact',
      identity: { revision: null },
    });
  });
});

describe('the signed PDF of a bag', () => {
  const pdf = (): Uint8Array => payload.get('package.pdf')!;
  const signature = bytes('\n% signed\n');
  const joined = (...parts: readonly Uint8Array[]): Uint8Array =>
    Uint8Array.from(parts.flatMap((part) => [...part]));

  let bag: Archived;
  beforeAll(async () => {
    const beside = { 'signed.pdf': joined(pdf(), signature) };
    bag = await archivedSluice({}, { signed: 'signed.pdf', beside });
  });

  test('is told to be the bound one with something at its end', async () => {
    expect((await verified(bag.bytes)).signed).toEqual({
      comparison: 'same start',
      message: expect.stringContaining('10 bytes added at its end') as string,
    });
  });

  test('is told apart where it is another file', async () => {
    const beside = { 'signed.pdf': joined(bytes('%PDF-1.7 scanned'), signature) };
    const scanned = await archivedSluice({}, { signed: 'signed.pdf', beside });
    const found = await verified(scanned.bytes);
    expect(found.verdict).toBe('intact');
    expect(found.signed?.comparison).toBe('not compared');
  });

  test('is told not to be as recorded, where the record is wrong or silent', async () => {
    const changed = await forged(bag.bytes, (files) =>
      files.set('package.signed.pdf', bytes('%PDF-1.7 another')),
    );
    expect((await verified(changed)).signed?.comparison).toBe('not as recorded');
    const untold = await forged(archived.bytes, (files) =>
      files.set('package.signed.pdf', pdf()),
    );
    expect((await verified(untold)).signed?.comparison).toBe('not as recorded');
  });

  test('is missed where the record names it', async () => {
    const without = await forged(bag.bytes, (files) =>
      files.delete('package.signed.pdf'),
    );
    expect(await verified(without)).toMatchObject({
      verdict: 'damaged',
      damage: [{ path: 'data/record.json' }],
    });
  });
});

describe('what is no package', () => {
  test.each([
    ['a text', 'notes.zip', 'some notes', /begins neither as a bag nor as a PDF/u],
    ['an empty file', 'empty.zip', '', /begins neither/u],
    ['a PDF of another program', 'b.pdf', '%PDF-1.4\nnothing', /no sound PDF/u],
    ['a zip that is no bag', 'c.zip', 'PK\u0005\u0006', /c\.zip/u],
  ])('%s is refused by name', async (_, path, content, message) => {
    const found = await verified(bytes(content), path);
    expect(['unreadable', 'damaged']).toContain(found.verdict);
    expect(found.damage[0]?.message).toMatch(message);
  });

  test('is told where there is nothing, or a folder', async () => {
    const world = memoryWorld({ 'folder/a.zip': 'x' });
    expect(await verify(world, 'folder', program)).toMatchObject({
      verdict: 'unreadable',
      damage: [{ message: 'it is a folder' }],
    });
    expect(await verify(world, 'none.zip', program)).toMatchObject({
      damage: [{ message: 'there is no such file' }],
    });
  });

  test('a disk that fails is told, and the file is closed', async () => {
    let closed = 0;
    const world: World = {
      ...memoryWorld({}),
      open: () => ({
        file: {
          size: 100,
          readAt: () => {
            throw new Error('EIO');
          },
          close: () => (closed += 1),
        },
      }),
    };
    expect(await verify(world, 'a.zip', program)).toMatchObject({
      verdict: 'unreadable',
      damage: [{ message: 'the disk failed while it was read' }],
    });
    expect(closed).toBe(1);
  });
});

test('closes every file that it opens and writes none', async () => {
  let [opened, closed] = [0, 0];
  const inner = memoryWorld({
    'a.zip': archived.bytes,
    'b.zip': archived.bytes.subarray(0, -1),
    'c.pdf': payload.get('package.pdf')!,
  });
  const world: World = {
    ...inner,
    open: (path) => {
      const answer = inner.open(path);
      if (!('file' in answer)) return answer;
      opened += 1;
      return { file: { ...answer.file, close: () => (closed += 1) } };
    },
    write: () => {
      throw new Error('written');
    },
    writeNew: () => {
      throw new Error('written');
    },
  };
  for (const path of ['a.zip', 'b.zip', 'c.pdf']) await verify(world, path, program);
  expect(opened).toBeGreaterThan(3);
  expect(closed).toBe(opened);
});
