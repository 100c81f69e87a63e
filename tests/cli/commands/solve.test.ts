import { describe, expect, test } from 'vitest';
import { readResults } from '../../../src/index.ts';
import { ran, shed } from '../../support/command-line.ts';

const broken = {
  'members/b1.yaml':
    'mark: B1\nkind: beam\npoints: { A: 0 ft, B: 12 }\nsupports: { A: pin, B: roller }\n',
};

describe('solve', () => {
  test('shows the steps of every member as text, and writes nothing', async () => {
    const world = shed();
    const files = world.files.size;
    const { code, out, err } = await ran(['solve', 'shed'], world);
    expect([code, err]).toEqual([0, '']);
    expect(out).toContain('B1 · Ridge beam\n═══════════════\n');
    expect(out).toMatch(/R_B = 2 kip \(6 ft\) \/ \(12 ft\)\n/);
    expect(out).toContain('\nB2\n══\n');
    expect(out).not.toContain('Table of support reactions');
    expect(world.files.size).toBe(files);
  });

  test('shows the members asked for alone', async () => {
    const { code, out } = await ran(['solve', 'shed', 'B2'], shed());
    expect(code).toBe(0);
    expect(out).toMatch(/^B2\n══\n/);
    expect(out).not.toContain('Ridge beam\n═');
  });

  test('suggests the nearest mark', async () => {
    const { code, out, err } = await ran(['solve', 'shed', 'B3'], shed());
    expect([code, out]).toEqual([1, '']);
    expect(err).toContain(
      'the project has no member B3  [unknown-member]\n  → write B1',
    );
  });

  test('shows the good members beside the errors of others', async () => {
    const { code, out, err } = await ran(
      ['solve', 'shed'],
      shed({ 'members/b2.yaml': broken['members/b1.yaml'].replace('B1', 'B2') }),
    );
    expect(code).toBe(1);
    expect(out).toContain('R_B = 2 kip (6 ft) / (12 ft)');
    expect(err).toContain('Error in shed/members/b2.yaml:3:23:');
  });

  test('errors of members that were not asked for do not count, unless those asked for lean on them', async () => {
    const alone = await ran(
      ['solve', 'shed', 'B1'],
      shed({ 'members/b2.yaml': 'mark: B2\nkind: beam\n' }),
    );
    expect([alone.code, alone.err]).toEqual([0, '']);
    const leaning = await ran(['solve', 'shed', 'B2'], shed(broken));
    expect(leaning.code).toBe(1);
    expect(leaning.err).toContain('[depends-on-unsolved]');
    expect(leaning.err).toContain('[unit-missing]');
  });
});

describe('solve --json', () => {
  test('prints every figure in the form of results.json', async () => {
    const { code, out, err } = await ran(
      ['solve', 'shed', '--json', '--stations', '4'],
      shed(),
    );
    expect([code, err]).toEqual([0, '']);
    const reading = readResults(out);
    if (reading.kind !== 'results') throw new Error(reading.kind);
    const [beam] = reading.results.members;
    if (beam === undefined || 'error' in beam) throw new Error('no results');
    expect(beam.results.S?.stations?.length).toBe(5);
    expect(beam.results.S?.moment.max.value).toBeCloseTo(6, 9);
    expect(reading.results.members.map((member) => 'sheet' in member)).toEqual([
      false,
      false,
    ]);
  });

  test('prints the members asked for alone', async () => {
    const reading = readResults(
      (await ran(['solve', 'shed', 'B2', '--json'], shed())).out,
    );
    expect(
      reading.kind === 'results' && reading.results.members.map(({ mark }) => mark),
    ).toEqual(['B2']);
  });

  test('gives a member in error its error, the others their results, and exits 1', async () => {
    const { code, out } = await ran(['solve', 'shed', '--json'], shed(broken));
    expect(code).toBe(1);
    const reading = readResults(out);
    if (reading.kind !== 'results') throw new Error(reading.kind);
    expect(
      reading.results.members.map((member) =>
        'error' in member ? member.error.code : 'solved',
      ),
    ).toEqual(expect.arrayContaining(['unit-missing', 'depends-on-unsolved']));
  });

  test('prints errors with their places where the project cannot be read', async () => {
    const world = shed({ 'project.yaml': 'project: { title: Shed }\nunits: metric\n' });
    const { code, out, err } = await ran(['solve', 'shed', '--json'], world);
    expect(code).toBe(1);
    expect(JSON.parse(out)).toEqual({
      format: 1,
      errors: [
        {
          code: 'not-one-of',
          message: expect.any(String) as string,
          file: 'project.yaml',
          line: 2,
          column: 8,
        },
      ],
    });
    expect(readResults(out).kind).toBe('project-errors');
    expect(err).toContain('Error in shed/project.yaml:2:8');
  });

  test('prints JSON for a folder that is not there', async () => {
    const { code, out } = await ran(['solve', 'nowhere', '--json']);
    expect(code).toBe(1);
    expect(readResults(out).kind).toBe('project-errors');
  });

  test('takes stations by whole numbers and with --json only', async () => {
    for (const text of ['0', 'x', '1.5', '10001', '-3'])
      expect(
        (await ran(['solve', 'shed', '--json', `--stations=${text}`], shed())).code,
      ).toBe(1);
    expect((await ran(['solve', 'shed', '--stations', '3'], shed())).err).toContain(
      'add --json',
    );
  });
});
