import { describe, expect, test } from 'vitest';
import { recordOf, writeRecord } from '../../../src/archive/index.ts';
import { writeBag } from '../../../src/bag/index.ts';
import { readProject } from '../../../src/project/index.ts';
import { memoryWorld, type MemoryWorld } from '../../../src/world/index.ts';
import { ran } from '../../support/command-line.ts';
import { issueShed, issueYaml } from '../../support/issue.ts';

/** Bags that hold a record alone, by path, from the texts of their project.yaml. */
async function vault(bags: Readonly<Record<string, string>>): Promise<MemoryWorld> {
  const files: Record<string, Uint8Array> = {};
  for (const [path, yaml] of Object.entries(bags)) {
    const { definition } = readProject(
      issueShed({ 'project.yaml': yaml }),
      'shed',
    ).value!;
    const record = recordOf({
      definition,
      results: {
        format: 1,
        project: { number: null, title: '', revision: null, units: 'us' },
        members: [],
      },
      sheets: 12,
      program: { name: 'sumzero', version: '0.0.0' },
      supersededSha256: null,
      asIs: path.includes('as-is') ? ['Revision A lacks its date.'] : [],
      signed: null,
    });
    files[path] = await writeBag({
      payload: [
        { path: 'record.json', bytes: new TextEncoder().encode(writeRecord(record)) },
      ],
      info: [],
    });
  }
  return memoryWorld(files);
}

describe('register', () => {
  test('prints a table that fits a hundred columns, with what supersedes each', async () => {
    const world = await vault({
      'vault/0.zip': issueYaml('status: issued', '[ { mark: "-", date: 2031-02-10 } ]'),
      'vault/as-is.zip': issueYaml(
        'status: for review, supersedes: { revision: "-" }',
        '[ { mark: "-" }, { mark: A, date: 2031-03-14 } ]',
      ),
    });
    const { code, out, err } = await ran(['register', 'vault/'], world);
    expect([code, err]).toEqual([0, '']);
    expect(out.replaceAll(/[0-9a-f]{12}$/gmu, 'CHECKSUM')).toBe(
      [
        'Number    Rev  Status      Date        By       Sheets  Ratio  SHA-256',
        '2031-014  -    issued      2031-02-10  AQ/RT/–  12      –      CHECKSUM',
        '    Potting shed: vault/0.zip',
        '    superseded by 2031-014 revision A',
        '2031-014  A    for review  2031-03-14  AQ/RT/–  12      –      CHECKSUM',
        '    Potting shed: vault/as-is.zip',
        '    archived as it is',
        '',
      ].join('\n'),
    );
  });

  test('wraps long titles, and lets no control character through', async () => {
    const title = `${'long '.repeat(40)}end \\u001b[2J`;
    const world = await vault({
      'a.zip': issueYaml().replace('title: Potting shed', `title: "${title}"`),
    });
    const { out } = await ran(['register', 'a.zip'], world);
    expect(out.split('\n').every((line) => line.length <= 100)).toBe(true);
    expect(out).toContain('end \ufffd[2J: a.zip');
  });

  test('ends with 1 where two bags of one revision differ, and says which', async () => {
    const world = await vault({
      'vault/one.zip': issueYaml(),
      'vault/two.zip': issueYaml('status: for review'),
    });
    const { code, out } = await ran(['register', 'vault'], world);
    expect(code).toBe(1);
    expect(out).toContain(
      '    another bag of this number and revision differs: vault/two.zip',
    );
  });

  test('--csv and --json hold the whole checksum', async () => {
    const world = await vault({ 'a.zip': issueYaml() });
    const csv = await ran(['register', 'a.zip', '--csv'], world);
    const json = await ran(['register', 'a.zip', '--json'], world);
    const sha256 = /,([0-9a-f]{64}),/u.exec(csv.out)?.[1];
    expect(JSON.parse(json.out)).toMatchObject({
      format: 1,
      packages: [{ sha256, number: '2031-014' }],
    });
  });

  test('says what it reads while that takes long', async () => {
    const world = await vault({ 'a.zip': issueYaml() });
    const later = [0, 2000, 4000, 6000];
    const { err } = await ran(['register', 'a.zip'], world, {
      isTerminal: true,
      now: () => later.shift() ?? 9000,
    });
    expect(err).toContain('sumzero: reading a.zip …');
  });

  test.each([
    [['register'], 'register needs a folder, a bag or a bound PDF'],
    [['register', 'none'], 'none is not in the register: there is no such file'],
    [['register', 'a', '--csv', '--json'], '--csv and --json cannot both be printed'],
  ])('%j is refused', async (args, words) => {
    const { code, err } = await ran(args);
    expect(code).toBe(1);
    expect(err).toContain(words);
  });
});
