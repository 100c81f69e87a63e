import { describe, expect, test } from 'vitest';
import { openPackage } from '../../src/archive/index.ts';
import { writeBag } from '../../src/bag/index.ts';
import { bindProject } from '../../src/pipeline.ts';
import { readProject } from '../../src/project/index.ts';
import { memoryWorld } from '../../src/world/index.ts';
import { shed } from '../support/command-line.ts';

const program = { name: 'sumzero', version: '0.0.0' };
const bytesOf = (text: string): Uint8Array => new TextEncoder().encode(text);

describe('opening a package', () => {
  test('a folder is itself, wherever it lies', async () => {
    const world = shed();
    const { value, diagnostics } = await openPackage(world, 'shed');
    expect(diagnostics).toEqual([]);
    expect(value).toEqual({ kind: 'folder', path: 'shed', folder: 'shed', world });
  });

  test('a bound PDF alone can be worked and bound again, to the same bytes', async () => {
    const world = shed({
      'worked/b1.yaml':
        'member: B1\nsteps: [ { sum: forces up, write: "RA + RB - 2 kip = 0" } ]\n',
      'report-templates/cautions.hbs': '<h1 id="cautions">Mind the step</h1>\n',
    });
    const { pdf = new Uint8Array(), json } = await bindProject(world, 'shed', {
      program,
    });
    const apart = memoryWorld({ 'in/tray.bin': pdf });
    const { value } = await openPackage(apart, 'in/tray.bin');
    expect(value).toMatchObject({ kind: 'pdf', folder: 'in/tray.bin', results: json });
    const again = await bindProject(value!.world, value!.folder, { program });
    expect(again.pdf).toEqual(pdf);
  }, 60_000);

  test('a bag gives the project folder that it keeps, its figures and its record', async () => {
    const kept = [...shed().files].map(([path, bytes]) => ({
      path: path.replace('shed/', 'definition/'),
      bytes,
    }));
    const bag = await writeBag({
      payload: [
        ...kept,
        { path: 'results.json', bytes: bytesOf('{}\n') },
        { path: 'record.json', bytes: bytesOf('{}\n') },
        { path: 'definition/notes/private.txt', bytes: bytesOf('not read') },
      ],
      info: [],
    });
    const { value, diagnostics } = await openPackage(
      memoryWorld({ 'a.zip': bag }),
      'a.zip',
    );
    expect(diagnostics).toEqual([]);
    // A record that is none leaves the bag openable: what is wrong with it is for proving to say.
    expect(value).toMatchObject({ kind: 'bag', folder: 'a.zip', results: '{}\n' });
    expect(value).not.toHaveProperty('record');
    expect(value?.world.list('a.zip')).toEqual(['members/', 'project.yaml']);
    expect(readProject(value!.world, value!.folder).value?.definition.title).toBe(
      'Potting shed',
    );
  });
});

describe('what is no package is told', () => {
  test.each([
    ['nothing', {}, 'not-a-package', 'in/x cannot be opened: there is no such file'],
    [
      'a text',
      { 'in/x': 'Dear all,' },
      'not-a-package',
      'in/x is neither a bag nor a PDF',
    ],
    [
      'an empty file',
      { 'in/x': '' },
      'not-a-package',
      'in/x is neither a bag nor a PDF',
    ],
    [
      'a zip cut short',
      { 'in/x': 'PK\u0003\u0004 and no more' },
      'bag-unreadable',
      'in/x',
    ],
    ['a PDF cut short', { 'in/x': '%PDF-1.7\n' }, 'package-unreadable', 'in/x'],
  ] as const)('%s', async (_, files, code, words) => {
    const { value, diagnostics } = await openPackage(memoryWorld(files), 'in/x');
    expect(value).toBeUndefined();
    expect(diagnostics).toMatchObject([{ severity: 'error', code }]);
    expect(diagnostics[0]?.message).toContain(words);
  });

  test('a bag without a project folder', async () => {
    const bag = await writeBag({
      payload: [{ path: 'results.json', bytes: bytesOf('{}') }],
      info: [],
    });
    const { value, diagnostics } = await openPackage(
      memoryWorld({ 'a.zip': bag }),
      'a.zip',
    );
    expect(value).toBeUndefined();
    expect(diagnostics).toMatchObject([{ code: 'package-without-inputs' }]);
  });

  test('a bag that was altered is opened as it stands: proving it whole is another matter', async () => {
    const bag = await writeBag({
      payload: [{ path: 'definition/project.yaml', bytes: bytesOf('units: us\n') }],
      info: [],
    });
    const at = Buffer.from(bag).indexOf('units: us');
    const world = memoryWorld({ 'a.zip': bag.with(at, 0x55) });
    const { value } = await openPackage(world, 'a.zip');
    expect(value?.world.read('a.zip/project.yaml')).toEqual({
      bytes: bytesOf('Units: us\n'),
    });
  });
});
