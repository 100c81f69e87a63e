import { describe, expect, test } from 'vitest';
import { writeBag } from '../../../src/bag/index.ts';
import { memoryWorld, type MemoryWorld } from '../../../src/world/index.ts';
import { ran, shed } from '../../support/command-line.ts';

/** The shed twice: as it is in `shed`, with changes in `later`. */
function sheds(changes: Readonly<Record<string, string | undefined>>): MemoryWorld {
  const later = [...shed(changes).files].map(
    ([path, bytes]) => [path.replace(/^shed/, 'later'), bytes] as const,
  );
  return memoryWorld(Object.fromEntries([...shed().files, ...later]));
}

const b1 = (load: string): string =>
  [
    'mark: B1',
    'title: Ridge beam',
    'kind: beam',
    'points: { A: 0 ft, B: 12 ft }',
    'supports: { A: pin, B: roller }',
    `loads: [ ${load} ]`,
    '',
  ].join('\n');

describe('compare', () => {
  test('answers 0 where nothing differs, comments and spelling apart, and writes nothing', async () => {
    const world = sheds({
      'members/b1.yaml': `# the ridge\n${b1('{ at: 72 in, point: 2000 lb, case: S }')}`,
    });
    const files = world.files.size;
    const { code, out, err } = await ran(['compare', 'shed', 'later'], world);
    expect([code, out, err]).toEqual([
      0,
      'Potting shed → Potting shed\n\nNothing differs.\n',
      '',
    ]);
    expect(world.files.size).toBe(files);
  });

  test('answers 1 and tells inputs, results in per cent, and whose check is open again', async () => {
    const { code, out } = await ran(
      ['compare', 'shed', 'later/'],
      sheds({ 'members/b1.yaml': b1('{ case: S, point: 2.5 kip, at: 6 ft }') }),
    );
    expect(code).toBe(1);
    expect(out.split('\n')).toEqual([
      'Potting shed → Potting shed',
      '',
      'Inputs',
      '  B1',
      '    load S on B1 at 6 ft: 2 kip → 2.5 kip',
      '',
      'Results',
      '  B1',
      '    greatest moment: 6.000 kip ft → 7.500 kip ft (+25 %), by S at 6.000 ft',
      '    greatest shear: 1.000 kip → 1.250 kip (+25 %), by S at 0 ft',
      '    least shear: −1.000 kip → −1.250 kip (+25 %), by S at 6.000 ft',
      '    reaction y at A: 1.000 kip → 1.250 kip (+25 %), by S',
      '    reaction y at B: 1.000 kip → 1.250 kip (+25 %), by S',
      '  B2',
      '    greatest moment: 2.000 kip ft → 2.500 kip ft (+25 %), by S at 4.000 ft',
      '    greatest shear: 0.5000 kip → 0.6250 kip (+25 %), by S at 0 ft',
      '    least shear: −0.5000 kip → −0.6250 kip (+25 %), by S at 4.000 ft',
      '    reaction y at A: 0.5000 kip → 0.6250 kip (+25 %), by S',
      '    reaction y at B: 0.5000 kip → 0.6250 kip (+25 %), by S',
      '',
      'Checks open again',
      '  B1 (its own file)',
      '  B2 (carries B1)',
      '',
    ]);
  });

  test('prints format 1 as JSON', async () => {
    const { code, out } = await ran(
      ['compare', 'shed', 'later', '--json'],
      sheds({ 'project.yaml': 'project: { title: Summer house }\nunits: us\n' }),
    );
    expect(code).toBe(1);
    expect(JSON.parse(out)).toEqual({
      format: 1,
      earlier: { number: null, title: 'Potting shed', revision: null },
      later: { number: null, title: 'Summer house', revision: null },
      inputs: [
        {
          kind: 'changed',
          part: 'identity',
          what: 'title of the project',
          from: 'Potting shed',
          to: 'Summer house',
        },
      ],
      outcomes: [],
      checks: [],
      results: [],
      reach: [],
    });
  });

  test('tells what fails now before anything else, with its ratio', async () => {
    const project = (limit: string): string =>
      `project: { title: Potting shed }\nunits: us\ncriteria: { deflection_limits: { S: ${limit} } }\n`;
    const stiff = `${b1('{ case: S, point: 2 kip, at: 6 ft }')}section: { I: 100 in^4 }\nmaterial: { E: 1600 ksi }\n`;
    const world = memoryWorld({
      'a/project.yaml': project('L/120'),
      'a/members/b1.yaml': stiff,
      'b/project.yaml': project('L/480'),
      'b/members/b1.yaml': stiff,
    });
    const { code, out } = await ran(['compare', 'a', 'b'], world);
    expect(code).toBe(1);
    // P L³/(48 E I) = 2 (144)³/(48 (1600) 100) = 0.7776 in against 144/120 = 1.2 in, then 144/480 = 0.3 in.
    expect(out.split('\n').slice(2, 4)).toEqual([
      'Newly failing',
      '  B1: deflection S of span A to B, ratio 0.65 → 2.59',
    ]);
    expect(out).toContain('B1 (what the project shares)');
  });

  test('says of a member that it can no longer be solved, and goes on', async () => {
    const { code, out, err } = await ran(
      ['compare', 'shed', 'later'],
      sheds({
        'members/b2.yaml':
          'mark: B2\nkind: beam\npoints: { A: 0 ft, B: 8 ft }\nsupports: { A: pin }\nloads: [ { reaction: B1.B, at: 4 ft } ]\n',
      }),
    );
    expect(code).toBe(1);
    expect(out).toContain('Solved or not\n  B2: no longer solved, ');
    expect(out).toContain('removed support at B of B2: roller');
    expect(err).toContain('[unstable]');
  });

  test('refuses what cannot be read, and says which of the two it is', async () => {
    const { code, out, err } = await ran(
      ['compare', 'shed', 'later', '--json'],
      sheds({ 'project.yaml': 'units: us\n' }),
    );
    expect(code).toBe(1);
    expect(err).toContain('later/project.yaml');
    expect(JSON.parse(out)).toMatchObject({ format: 1, errors: [{}] });
    const gone = await ran(['compare', 'shed', 'nowhere'], shed());
    expect(gone.code).toBe(1);
    expect(gone.err).toContain('nowhere');
  });

  test('opens a bound PDF beside a folder, and finds them alike', async () => {
    const world = shed();
    expect((await ran(['bind', 'shed', '--quiet'], world)).code).toBe(0);
    const { code, out } = await ran(['compare', 'shed/package.pdf', 'shed'], world);
    expect([code, out]).toEqual([
      0,
      'Potting shed → Potting shed\n\nNothing differs.\n',
    ]);
  });

  test('opens a bag as the earlier side', async () => {
    const world = shed({
      'members/b1.yaml': b1('{ case: S, point: 2 kip, at: 5 ft }'),
    });
    const payload = [...shed().files].map(([path, bytes]) => ({
      path: path.replace(/^shed/u, 'definition'),
      bytes,
    }));
    world.write('shed-A.zip', await writeBag({ payload, info: [] }));
    const { code, out, err } = await ran(['compare', 'shed-A.zip', 'shed'], world);
    expect([code, err]).toEqual([1, '']);
    expect(out).toContain('    moved load S of 2 kip on B1: 6 ft → 5 ft\n');
  });

  test('colours what fails, where colours are wanted alone', async () => {
    const changes = { 'members/b1.yaml': b1('{ case: S, point: 3 kip, at: 6 ft }') };
    const plain = await ran(['compare', 'shed', 'later'], sheds(changes));
    const coloured = await ran(['compare', 'shed', 'later'], sheds(changes), {
      coloured: { out: true, err: false },
    });
    expect(plain.out).not.toContain('\u001b');
    expect(coloured.out).toContain('\u001b');
  });

  test('asks for two packages', async () => {
    const { code, err } = await ran(['compare', 'shed'], shed());
    expect(code).toBe(1);
    expect(err).toContain('compare needs two packages');
  });
});
