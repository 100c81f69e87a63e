import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { archiveProject, type Archived } from '../../src/archive/index.ts';
import { openBag, type OpenBag } from '../../src/bag/index.ts';
import { bindProject } from '../../src/pipeline.ts';
import { readPageText, readPages, readPdf } from '../../src/pdf/index.ts';
import { digest, memoryWorld, type World } from '../../src/world/index.ts';
import { issueShed, issueYaml } from '../support/issue.ts';

const program = { name: 'sumzero', version: '0.0.0' };
const bytesOf = (text: string): Uint8Array => new TextEncoder().encode(text);

async function archived(
  world: World,
  more: { readonly isAsIs?: boolean; readonly signed?: string } = {},
): Promise<{ readonly kept: Archived; readonly told: readonly string[] }> {
  const { value, diagnostics } = await archiveProject(world, 'shed', {
    program,
    ...more,
  });
  if (value === undefined)
    throw new Error(diagnostics.map(({ message }) => message).join('\n'));
  return { kept: value, told: diagnostics.map(({ code }) => code) };
}

async function opened(bytes: Uint8Array): Promise<OpenBag> {
  const { value } = await openBag(memoryWorld({ 'a.zip': bytes }), 'a.zip');
  return value!;
}

describe('an archived bag', () => {
  const world = issueShed({ 'notes.txt': 'not read', 'images/.hidden': 'not read' });
  const made = archived(world);

  test('holds the package as bound, its figures, every file that was read to the byte, and the licences of its faces', async () => {
    const bag = await opened((await made).kept.bytes);
    const bound = await bindProject(world, 'shed', { program });
    const paths = bag.files.map(({ path }) => path).toSorted();
    expect(paths).toEqual([
      'bag-info.txt',
      'bagit.txt',
      'data/definition/members/b1.yaml',
      'data/definition/project.yaml',
      'data/licences/OFL-KaTeX.txt',
      'data/licences/OFL-SourceSerif4.txt',
      'data/package.pdf',
      'data/record.json',
      'data/results.json',
      'manifest-sha256.txt',
      'tagmanifest-sha256.txt',
    ]);
    expect(await bag.read('data/package.pdf')).toEqual(bound.pdf);
    expect(await bag.read('data/results.json')).toEqual(bytesOf(bound.json ?? ''));
    for (const name of ['project.yaml', 'members/b1.yaml'])
      expect(await bag.read(`data/definition/${name}`)).toEqual(
        world.files.get(`shed/${name}`),
      );
    const licences = readdirSync('fonts').filter((name) => name.startsWith('OFL-'));
    expect(paths.filter((path) => path.includes('licences'))).toHaveLength(
      licences.length,
    );
    for (const name of licences)
      expect(await bag.read(`data/licences/${name}`)).toEqual(
        new Uint8Array(readFileSync(`fonts/${name}`)),
      );
  }, 60_000);

  test('is described by the labels of RFC 8493, 2.2.2, and dated by its revision', async () => {
    const { info } = await opened((await made).kept.bytes);
    expect(info.filter(({ label }) => label !== 'Payload-Oxum')).toEqual([
      { label: 'Source-Organization', value: 'Fernhill Structural' },
      { label: 'External-Description', value: 'Potting shed' },
      { label: 'External-Identifier', value: '2031-014-A' },
      { label: 'Bagging-Date', value: '2031-03-14' },
      { label: 'Bag-Group-Identifier', value: '2031-014' },
      { label: 'Internal-Sender-Identifier', value: '2031-014-A' },
      {
        label: 'Internal-Sender-Description',
        value: 'Calculation package, structural, issued',
      },
      { label: 'Bag-Software-Agent', value: 'sumzero 0.0.0' },
    ]);
  });

  test('records whose it is, where it stands and what governs', async () => {
    const { record, path, sha256, bytes } = (await made).kept;
    expect(path).toBe('shed/issued/2031-014-A.zip');
    expect(sha256).toBe(digest(bytes));
    expect(record).toMatchObject({
      status: 'issued',
      revision: { mark: 'A', date: '2031-03-14', sheets: 'all' },
      people: {
        prepared: { name: 'A. Quill', date: '2031-03-12', licence: null },
        checked: { licence: 'PE 00000' },
        approved: null,
      },
      supersedes: null,
      totals: { members: 1, unsolved: 0, checks: 1, failing: 0 },
      closure: { member: 'B1' },
      asIs: [],
      signed: null,
    });
    // P L³/(48 E I) = 2 · 144³/(48 · 29000 · 204) = 0.02103 in, against 144/360 = 0.4 in.
    expect(record.totals.governing).toMatchObject({
      member: 'B1',
      check: 'deflection, S, A to B',
      passes: true,
    });
    expect(record.totals.governing?.ratio).toBeCloseTo(0.05257, 4);
    expect(record.closure?.share).toBeLessThan(1e-12);
    expect(record.totals.sheets).toBeGreaterThan(3);
  });

  test('is the same to the byte in another time zone and another language', async () => {
    const before = { TZ: process.env.TZ, LANG: process.env.LANG };
    try {
      process.env.TZ = 'Pacific/Kiritimati';
      process.env.LANG = 'tr_TR.UTF-8';
      expect((await archived(issueShed())).kept.bytes).toEqual((await made).kept.bytes);
    } finally {
      for (const [name, value] of Object.entries(before))
        if (value === undefined) Reflect.deleteProperty(process.env, name);
        else process.env[name] = value;
    }
  }, 60_000);
});

test.each(['preliminary', 'for review', 'superseded', 'void'])(
  'a package that is %s is archived as such',
  async (status) => {
    const world = issueShed({ 'project.yaml': issueYaml(`status: ${status}`) });
    const { record } = (await archived(world)).kept;
    expect(record.status).toBe(status);
  },
  60_000,
);

describe('what is not in order', () => {
  const faulty = {
    'project.yaml': issueYaml(
      'status: issued',
      '[ { mark: "-", note: First issue }, { mark: A, date: 2031-03-14, reason: Permit, prepared: AQ, checked: RT, sheets: all } ]',
    ),
    'members/b2.yaml':
      'mark: B2\nkind: beam\npoints: { A: 0 ft, B: 8 ft }\nsupports: { A: roller, B: roller }\n',
  };

  test('is refused, with everything that is missing and every error of the binding', async () => {
    const world = issueShed(faulty);
    const { value, diagnostics } = await archiveProject(world, 'shed', { program });
    expect(value).toBeUndefined();
    expect(
      diagnostics
        .filter(({ severity }) => severity === 'error')
        .map(({ code, message }) => [code, message]),
    ).toEqual([
      [
        'revision-incomplete',
        'revision - lacks its date, the reason, who prepared it, who checked it and the sheets affected',
      ],
      ['revision-incomplete', 'revision A lacks a note of what was changed'],
      ['unstable', expect.any(String)],
    ]);
    const yaml = faulty['project.yaml'];
    expect(
      diagnostics
        .filter(({ code }) => code === 'revision-incomplete')
        .map(({ span }) => yaml.slice(span?.start, span?.end).slice(0, 11)),
    ).toEqual(['{ mark: "-"', '{ mark: A, ']);
  });

  test('is archived where it is said, with the reasons on the cover, in the record and in the bag', async () => {
    const { kept, told } = await archived(issueShed(faulty), { isAsIs: true });
    expect(told.filter((code) => code === 'archived-as-is')).toHaveLength(3);
    expect(kept.record.asIs).toEqual([
      'Revision - lacks its date, the reason, who prepared it, who checked it and the sheets affected.',
      'Revision A lacks a note of what was changed.',
      expect.stringMatching(/^Member B2: .*\.$/u),
    ]);
    expect(kept.record.totals).toMatchObject({ members: 2, unsolved: 1 });
    const bag = await opened(kept.bytes);
    expect(bag.info).toContainEqual({
      label: 'Internal-Sender-Description',
      value: 'Calculation package, structural, issued, archived as it is',
    });
    const pdf = readPdf((await bag.read('data/package.pdf')) ?? new Uint8Array());
    if ('problem' in pdf) throw new Error(pdf.problem);
    const cover = readPages(pdf)[0];
    const words = cover === undefined ? '' : JSON.stringify(readPageText(pdf, cover));
    expect(words.replace(/\s+/gu, ' ')).toContain('Archived as it is');
    expect(words).toContain('Revision A lacks a note of what was changed');
  }, 60_000);

  test('a bag that it supersedes and that is gone is a reason too', async () => {
    const yaml = issueYaml('status: issued, supersedes: { bag: issued/gone.zip }');
    const world = issueShed({ 'project.yaml': yaml });
    const { value, diagnostics } = await archiveProject(world, 'shed', { program });
    expect([value, diagnostics.map(({ code }) => code)]).toEqual([
      undefined,
      ['changes-unknown'],
    ]);
    const { kept } = await archived(world, { isAsIs: true });
    expect(kept.record.asIs).toEqual([
      expect.stringMatching(/^What changed since the package in issued\/gone\.zip/u),
    ]);
    expect(kept.record.supersedes).toMatchObject({
      bag: 'issued/gone.zip',
      sha256: null,
    });
  }, 60_000);

  test('a project that cannot be read is not archived, as it is or not', async () => {
    const world = issueShed({ 'project.yaml': 'units: us\n' });
    for (const isAsIs of [false, true]) {
      const { value, diagnostics } = await archiveProject(world, 'shed', {
        program,
        isAsIs,
      });
      expect(value).toBeUndefined();
      expect(diagnostics.map(({ code }) => code)).toContain('missing-key');
    }
  });
});

describe('a place that is taken', () => {
  test('is left as it is, before anything is bound, and the next step is told', async () => {
    const world = issueShed({ 'issued/2031-014-A.zip': 'issued before' });
    const stages: string[] = [];
    const { value, diagnostics } = await archiveProject(world, 'shed', {
      program,
      onStage: (stage) => stages.push(stage),
    });
    expect([value, stages]).toEqual([undefined, []]);
    expect(diagnostics).toMatchObject([
      {
        code: 'archive-exists',
        message:
          'shed/issued/2031-014-A.zip is there already, and an issued bag is never overwritten: a new issue is a new revision',
      },
    ]);
  });

  test.each([
    ['none/a.zip', 'none/a.zip cannot be written: there is no folder none'],
    ['shed/members', 'shed/members cannot be written: there is a folder of that name'],
  ])('and %s is refused', async (output, message) => {
    const { diagnostics } = await archiveProject(issueShed(), 'shed', {
      program,
      output,
    });
    expect(diagnostics).toMatchObject([{ code: 'write-failed', message }]);
  });
});

describe('a signed copy', () => {
  test('that begins with the bound bytes is kept as such, any other as not compared', async () => {
    const world = issueShed();
    const { pdf = new Uint8Array() } = await bindProject(world, 'shed', { program });
    world.write('signed.pdf', new Uint8Array([...pdf, ...bytesOf('\n% a signature')]));
    world.write('printed.pdf', bytesOf('%PDF-1.4 printed and scanned'));
    const same = await archived(world, { signed: 'signed.pdf' });
    expect([same.kept.record.signed, same.told]).toEqual([
      { path: 'data/package.signed.pdf', comparison: 'same start' },
      [],
    ]);
    const bag = await opened(same.kept.bytes);
    expect(await bag.read('data/package.signed.pdf')).toEqual(
      world.files.get('signed.pdf'),
    );
    expect(await bag.read('data/package.pdf')).toEqual(pdf);
    const other = await archived(world, { signed: 'printed.pdf' });
    expect([other.kept.record.signed?.comparison, other.told]).toEqual([
      'not compared',
      ['signed-not-compared'],
    ]);
  }, 120_000);

  test('that is no PDF or is not there is refused before anything is bound', async () => {
    const world = issueShed({ 'letter.txt': 'Dear all,' });
    for (const [signed, message] of [
      ['shed/letter.txt', 'shed/letter.txt is no PDF'],
      ['gone.pdf', 'there is no file gone.pdf'],
    ] as const) {
      const { diagnostics } = await archiveProject(world, 'shed', { program, signed });
      expect(diagnostics).toMatchObject([{ code: 'signed-unreadable', message }]);
    }
  });
});

test('two names that some disks take for one are told and not kept', async () => {
  const world = issueShed({ 'images/Logo.png': 'x', 'images/logo.png': 'x' });
  const { value, diagnostics } = await archiveProject(world, 'shed', { program });
  expect(value).toBeUndefined();
  expect(diagnostics).toContainEqual(
    expect.objectContaining({ severity: 'error', code: 'name-not-kept' }),
  );
}, 60_000);
