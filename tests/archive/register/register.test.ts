import { describe, expect, test } from 'vitest';
import {
  archiveProject,
  keepBag,
  register,
  registerCsv,
  registerJson,
} from '../../../src/archive/index.ts';
import { bindProject } from '../../../src/pipeline.ts';
import { digest, type MemoryWorld } from '../../../src/world/index.ts';
import { completeRow, issueShed, issueYaml } from '../../support/issue.ts';

const program = { name: 'sumzero', version: '0.0.0' };
const bytesOf = (text: string): Uint8Array => new TextEncoder().encode(text);
const first = completeRow.replace('mark: A', 'mark: "-"');

/** A project whose first issue is archived and whose second is bound, archived and kept as a PDF elsewhere. */
async function twice(): Promise<MemoryWorld> {
  const world = issueShed({
    'project.yaml': issueYaml('status: preliminary', `[ ${first} ]`),
  });
  const archive = async (): Promise<void> => {
    const { value } = await archiveProject(world, 'shed', { program });
    expect(keepBag(world, value!.path, value!.bytes)).toBeUndefined();
  };
  await archive();
  world.write(
    'shed/project.yaml',
    bytesOf(
      issueYaml(
        'status: preliminary, supersedes: { revision: "-", bag: issued/2031-014-0.zip }',
        `[ ${first}, ${completeRow} ]`,
      ),
    ),
  );
  await archive();
  const { pdf, json } = await bindProject(world, 'shed', { program });
  world.write('shed/package.pdf', pdf!);
  world.write('shed/results.json', bytesOf(json!));
  world.write('vault/sent out.pdf', pdf!);
  world.write('vault/somebody elses.pdf', bytesOf('%PDF-1.4 not ours'));
  world.write('vault/photographs.zip', bytesOf('PK\u0003\u0004 not ours'));
  return world;
}

describe('a register', () => {
  const made = twice();

  test('lists folder, bags and PDF with all that a bag says, and what supersedes what', async () => {
    const world = await made;
    const { rows, diagnostics } = await register(world, ['shed', 'vault']);
    expect(diagnostics).toEqual([]);
    expect(
      rows.map(({ path, kind, revision, bound, supersededBy }) => [
        path,
        kind,
        revision,
        bound,
        supersededBy,
      ]),
    ).toEqual([
      ['shed/issued/2031-014-0.zip', 'bag', '-', 'bound', ['2031-014 revision A']],
      ['shed/issued/2031-014-A.zip', 'bag', 'A', 'bound', []],
      ['shed', 'folder', 'A', 'bound', []],
      ['vault/sent out.pdf', 'pdf', 'A', 'bound', []],
    ]);
    const [, bag, folder, pdf] = rows;
    const alike = [
      'number',
      'title',
      'status',
      'date',
      'prepared',
      'governing',
      'sheets',
    ] as const;
    for (const key of alike) {
      expect(folder?.[key]).toEqual(bag?.[key]);
      expect(pdf?.[key]).toEqual(bag?.[key]);
    }
    expect(bag).toMatchObject({
      number: '2031-014',
      date: '2031-03-14',
      checked: { name: 'R. Tamsin', initials: 'RT' },
      approved: null,
      governing: { member: 'B1', passes: true },
      sha256: digest(world.files.get('shed/issued/2031-014-A.zip')!),
      supersedes: {
        sha256: digest(world.files.get('shed/issued/2031-014-0.zip')!),
      },
    });
    expect([folder?.sha256, pdf?.sha256]).toEqual([
      null,
      digest(world.files.get('vault/sent out.pdf')!),
    ]);
  }, 120_000);

  test('tells of a folder whether its package is of its present state', async () => {
    const world = await made;
    const stateOf = async (yaml: string): Promise<string | undefined> => {
      const before = world.files.get('shed/project.yaml')!;
      world.write('shed/project.yaml', bytesOf(yaml));
      const { rows } = await register(world, ['shed']);
      world.write('shed/project.yaml', before);
      return rows.find(({ kind }) => kind === 'folder')?.bound;
    };
    expect(await stateOf(issueYaml())).toBe('changed since');
    expect(await stateOf(issueYaml('status: issued', '[ { mark: B } ]'))).toBe(
      'another revision',
    );
    const bare = await register(issueShed(), ['shed']);
    expect(bare.rows).toMatchObject([
      { bound: 'not bound', sheets: null, governing: null },
    ]);
  });

  test('names what it could not take up: an error where it was named, a remark where it was found', async () => {
    const world = issueShed({
      'project.yaml': 'units: us\n',
      'notes.txt': 'Dear all,',
      'issued/broken.zip': `PK\u0003\u0004${'\0'.repeat(26)}bagit.txt and no more`,
    });
    const { rows, diagnostics } = await register(world, [
      'shed',
      'shed/notes.txt',
      'none',
      'shed/members',
    ]);
    expect(rows).toEqual([]);
    expect(
      diagnostics.map(({ severity, code, message }) => [severity, code, message]),
    ).toEqual([
      [
        'error',
        'not-a-package',
        'shed/members holds no project, no bag and no bound PDF',
      ],
      [
        'error',
        'not-registered',
        expect.stringContaining('shed is not in the register: project.yaml: '),
      ],
      [
        'remark',
        'not-registered',
        expect.stringContaining('shed/issued/broken.zip is not in the register: '),
      ],
      [
        'error',
        'not-registered',
        'shed/notes.txt is not in the register: it is neither a bag nor a PDF',
      ],
      ['error', 'not-registered', 'none is not in the register: there is no such file'],
    ]);
  });

  test('as CSV has a line a package that RFC 4180 reads back, as JSON every key', async () => {
    const { rows } = await register(await made, ['shed']);
    const title = 'Shed, "north"\nwing';
    const lines = registerCsv([{ ...rows[0]!, title }, ...rows.slice(1)]).split('\r\n');
    expect(lines).toHaveLength(rows.length + 2);
    expect(lines[0]).toMatch(/^number,title,revision,status,date,/u);
    expect(lines[1]).toMatch(
      /^2031-014,"Shed, ""north""\nwing",-,preliminary,2031-03-14,A\. Quill \(AQ\),R\. Tamsin \(RT\),,\d+,0\.0525\d+,B1,"deflection, S, A to B",yes,[0-9a-f]{64},2031-014 revision A,bag,bound,shed\/issued\/2031-014-0\.zip,$/u,
    );
    expect(JSON.parse(registerJson(rows))).toEqual({ format: 1, packages: rows });
  });
});
