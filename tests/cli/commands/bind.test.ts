import { describe, expect, test } from 'vitest';
import { readResults } from '../../../src/index.ts';
import type { World } from '../../../src/world/index.ts';
import { ran, shed } from '../../support/command-line.ts';

const heavier = 'loads: [ { case: S, point: 3 kip, at: 6 ft } ]';
const faulty =
  'mark: B2\nkind: beam\npoints: { A: 0 ft, B: 8 }\nsupports: { A: pin, B: roller }\n';
const text = (bytes: Uint8Array | undefined): string => new TextDecoder().decode(bytes);

describe('bind', () => {
  test('writes the package and its figures, tells of each member, and what changed the next time', async () => {
    const world = shed();
    const first = await ran(['bind', 'shed', '--timings'], world);
    expect(first.code).toBe(0);
    expect(first.out).toMatch(
      /^B1 {3}Ridge beam {3}M 6\.000 kip·ft \(S\) {3}R 1\.000 kip at A \(S\)\n/,
    );
    expect(first.out).toMatch(
      /Bound \d+ sheets: shed\/package\.pdf\nEvery figure of them: shed\/results\.json\n$/,
    );
    expect(first.err).toMatch(
      /^loading [\d.]+ s\nreading [\d.]+ s\n.*in all [\d.]+ s\n$/s,
    );
    expect(text(world.files.get('shed/package.pdf')).slice(0, 5)).toBe('%PDF-');
    const figures = readResults(text(world.files.get('shed/results.json')));
    expect(
      figures.kind === 'results' && figures.results.members.map(({ sheet }) => sheet),
    ).toEqual([expect.any(Number), expect.any(Number)]);
    world.write(
      'shed/members/b1.yaml',
      new TextEncoder().encode(
        text(world.files.get('shed/members/b1.yaml')).replace(/loads: .*/, heavier),
      ),
    );
    const second = await ran(['bind', 'shed'], world);
    expect(second.out.split('\n')[0]).toMatch(/moment \+50\.0 %, reaction \+50\.0 %$/);
  }, 120_000);

  test('writes nothing and overwrites nothing where there are errors', async () => {
    const world = shed({
      'members/b2.yaml': faulty,
      'package.pdf': 'old',
      'results.json': 'old',
    });
    const { code, out, err } = await ran(['bind', 'shed'], world);
    expect([code, out]).toEqual([1, '']);
    expect(err).toContain('Error in shed/members/b2.yaml:3:23:');
    expect(err).toMatch(
      /1 error\. Nothing was written\. sumzero explain unit-missing tells more\.\n$/,
    );
    expect(text(world.files.get('shed/package.pdf'))).toBe('old');
    expect(text(world.files.get('shed/results.json'))).toBe('old');
  });

  test('--keep-going binds the good members, tells the errors, and still exits 1', async () => {
    const world = shed({ 'members/b2.yaml': faulty });
    const { code, out, err } = await ran(['bind', 'shed', '--keep-going'], world);
    expect(code).toBe(1);
    expect(out).toContain('B2                no results: unit-missing');
    expect(err).toContain('[unit-missing]');
    expect(world.files.has('shed/package.pdf')).toBe(true);
  }, 120_000);

  test('--only binds some members into files of their own, quietly where asked', async () => {
    const world = shed({ 'members/b2.yaml': faulty });
    const args = [
      'bind',
      'shed',
      '--only',
      'B1',
      '-o',
      'one.pdf',
      '--json',
      'one.json',
      '--quiet',
    ];
    expect(await ran(args, world)).toEqual({ code: 0, out: '', err: '' });
    const figures = readResults(text(world.files.get('one.json')));
    expect(
      figures.kind === 'results' && figures.results.members.map(({ mark }) => mark),
    ).toEqual(['B1']);
    expect(world.files.has('one.pdf')).toBe(true);
    expect(world.files.has('shed/package.pdf')).toBe(false);
  }, 120_000);

  test('--only takes marks one after another, by commas, and none that do not exist', async () => {
    for (const marks of [['B1', 'B9'], ['B1,B9']]) {
      const world = shed();
      const { code, err } = await ran(
        ['bind', 'shed', '--only', ...marks, '--keep-going'],
        world,
      );
      expect(code).toBe(1);
      expect(err).toContain('the project has no member B9  [unknown-member]');
      expect(world.files.has('shed/package.pdf')).toBe(false);
    }
  });

  test('a place that cannot be written is told before anything is worked', async () => {
    const blind: World = {
      ...shed(),
      read: () => {
        throw new TypeError('nothing should be read');
      },
    };
    const missing = await ran(['bind', 'shed', '-o', 'nowhere/A.pdf'], blind);
    expect(missing.code).toBe(1);
    expect(missing.err).toBe(
      [
        'Error: A.pdf cannot be written to nowhere: there is no folder nowhere  [write-failed]',
        '  → make the folder nowhere first, or choose another place',
        '',
        '1 error. Nothing was written. sumzero explain write-failed tells more.',
        '',
      ].join('\n'),
    );
    expect((await ran(['bind', 'shed', '-o', 'shed'], blind)).err).toContain(
      'there is a folder of that name',
    );
  });

  test.each([
    ['package.pdf', 'Nothing was written.'],
    ['results.json', 'results.json cannot be written to shed: the disk is full'],
  ])(
    'a disk that fills up at %s is one clear message',
    async (name, said) => {
      const world = shed();
      const full: World = {
        ...world,
        write: (path, bytes) =>
          path.endsWith(name)
            ? { refused: 'the disk is full' }
            : world.write(path, bytes),
      };
      const { code, out, err } = await ran(['bind', 'shed', '--only', 'B1'], full);
      expect([code, out]).toEqual([1, '']);
      expect(err).toContain(said);
      expect(err.match(/Error/g)).toEqual(['Error']);
      expect(err.includes('Nothing was written')).toBe(name === 'package.pdf');
    },
    120_000,
  );

  test('figures of an older run that cannot be read are simply not compared with', async () => {
    const world = shed({ 'results.json': '{ "format": 7 }' });
    const { code, out } = await ran(['bind', 'shed', '--only', 'B1'], world);
    expect(code).toBe(0);
    expect(out.split('\n')[0]).toMatch(/R 1\.000 kip at A \(S\)$/);
  }, 120_000);

  test('a folder that is not there cannot be watched and is told like any other', async () => {
    const { code, err } = await ran(['bind', 'nowhere', '--watch'], shed());
    expect(code).toBe(1);
    expect(err).toContain('there is no folder nowhere  [not-a-folder]');
  });

  test('what layout could not set as asked is remarked on, and the package is made', async () => {
    const world = shed({
      'project.yaml': 'project: { title: Shed \u6881 }\nunits: us\n',
    });
    const { code, err } = await ran(['bind', 'shed'], world);
    expect(code).toBe(0);
    expect(err).toMatch(
      /^Remark: no typeface at hand has the character .* {2}\[set-otherwise\]\n$/,
    );
  }, 120_000);

  test('asks for one folder', async () => {
    expect((await ran(['bind'], shed())).err).toContain(
      'bind needs the folder of a project',
    );
    expect((await ran(['bind', 'shed', 'B1'], shed())).err).toContain(
      'write --only before the marks',
    );
    expect((await ran(['bind', 'nowhere'], shed())).err).toContain(
      'there is no folder nowhere  [not-a-folder]',
    );
  });
});
