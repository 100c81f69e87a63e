import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { codes } from '../../src/diagnostics/index.ts';
import { beamCodes } from '../../src/diagnostics/codes/beam.ts';
import { carriedCodes } from '../../src/diagnostics/codes/carried.ts';
import { folderCodes } from '../../src/diagnostics/codes/folder.ts';
import { formCodes } from '../../src/diagnostics/codes/form.ts';
import { loadCodes } from '../../src/diagnostics/codes/loads.ts';
import { projectCodes } from '../../src/diagnostics/codes/project.ts';
import { remarkCodes } from '../../src/diagnostics/codes/remarks.ts';
import { yamlCodes } from '../../src/diagnostics/codes/yaml.ts';
import { readProject } from '../../src/project/index.ts';
import { diskWorld, memoryWorld, type World } from '../../src/world/index.ts';
import { printDiagnostics } from '../support/print-diagnostics.ts';

const here = new URL('.', import.meta.url).pathname;
const folders = readdirSync(here, { withFileTypes: true })
  .filter((entry) => entry.isDirectory())
  .map((entry) => entry.name);

describe('a faulty folder', () => {
  test.each(folders)(
    '%s is told what is wrong, where, and what to try',
    async (name) => {
      const { value, diagnostics } = readProject(diskWorld(), `${here}${name}`);
      const printed = printDiagnostics(diagnostics, (path) => `${here}${name}/${path}`);
      const outcome =
        value === undefined
          ? 'no project'
          : `project of ${list(value.members)}; at fault ${list(value.faulty)}`;
      const account = `${printed}${outcome}\n`.replaceAll(`${here}${name}`, 'FOLDER');
      await expect(account).toMatchFileSnapshot(`${here}${name}/expected.txt`);
    },
  );
});

const list = (members: readonly { readonly mark: string }[]): string =>
  members.map((member) => member.mark).join(', ') || 'nobody';

describe('a folder that cannot lie in a repository', () => {
  const project = 'project: { title: Weir crossing }\nunits: us\n';
  const beam =
    'mark: B1\nkind: beam\npoints: { A: 0 ft, B: 9 ft }\nsupports: { A: fixed }\n';

  test('is refused where a file holds more than 1 MB', () => {
    const world = memoryWorld({
      'p/project.yaml': project,
      'p/members/b1.yaml': beam + '# padding\n'.repeat(110_000),
    });
    const { value, diagnostics } = readProject(world, 'p');
    expect(value).toBeUndefined();
    expect(diagnostics).toMatchObject([
      {
        code: 'file-too-large',
        message: 'members/b1.yaml holds 1.1 MB, and files over 1 MB are refused',
        span: { file: 'members/b1.yaml', start: 0, end: 0 },
      },
    ]);
  });

  test('is refused where it is not there, or is a file', () => {
    const world = memoryWorld({ 'p/project.yaml': project });
    for (const folder of ['q', 'p/project.yaml'])
      expect(readProject(world, folder).diagnostics).toMatchObject([
        { code: 'not-a-folder', message: `there is no folder ${folder}` },
      ]);
  });

  test('is refused where the disk withholds a file', () => {
    const world = memoryWorld({ 'p/project.yaml': project, 'p/members/b1.yaml': beam });
    const sealed: World = {
      ...world,
      read: (path) =>
        path.endsWith('b1.yaml')
          ? { refused: 'permission is denied' }
          : world.read(path),
    };
    expect(readProject(sealed, 'p').diagnostics).toMatchObject([
      {
        code: 'file-unreadable',
        message: 'members/b1.yaml cannot be read: permission is denied',
      },
    ]);
  });

  test('is refused where a file is only a link that leads nowhere', () => {
    const world = memoryWorld({ 'p/project.yaml': project, 'p/members/b1.yaml': beam });
    const broken: World = {
      ...world,
      read: (path) => (path.endsWith('b1.yaml') ? { missing: true } : world.read(path)),
    };
    expect(readProject(broken, 'p').diagnostics).toMatchObject([
      { code: 'file-unreadable', message: 'members/b1.yaml leads to no file' },
    ]);
  });
});

test('every code of a mistake in a folder has a faulty folder that shows it', () => {
  const made = ['file-too-large', 'file-unreadable', 'not-a-folder'];
  const shown = folders.flatMap((name) =>
    [
      ...readFileSync(`${here}${name}/expected.txt`, 'utf8').matchAll(
        /^(?:error|remark) ([a-z-]+)/gm,
      ),
    ].map((found) => found[1]),
  );
  const groups = [
    beamCodes,
    carriedCodes,
    folderCodes,
    formCodes,
    loadCodes,
    projectCodes,
    remarkCodes,
    yamlCodes,
  ];
  const wanted = groups.flatMap((group) => Object.keys(group));
  expect(
    wanted.filter((code) => !shown.includes(code) && !made.includes(code)),
  ).toEqual([]);
  expect(shown.filter((code) => !Object.hasOwn(codes, code ?? ''))).toEqual([]);
});
