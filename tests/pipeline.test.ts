import { describe, expect, test } from 'vitest';
import { bindProject, resultsOf, workProject } from '../src/index.ts';
import { readAttachments, readPdf } from '../src/pdf/index.ts';
import { readResults } from '../src/results/index.ts';
import { memoryWorld } from '../src/world/index.ts';

const program = { name: 'sumzero', version: '0.0.0' };

const beam = (mark: string, supports: string): string => `
mark: ${mark}
kind: beam
points: { A: 0 ft, B: 6 ft, C: 21 ft }
supports: ${supports}
loads:
  - { point: 8.4 kip, at: B }
`;

const files = {
  'depot/project.yaml': 'project: { title: Depot }\nunits: us\n',
  'depot/members/B1.yaml': beam('B1', '{ A: pin, C: roller }'),
};

describe('binding a project', () => {
  test('gives the reactions and the moment that statics gives by hand', () => {
    const reading = readResults(resultsOf(workProject(memoryWorld(files), 'depot')));
    if (reading.kind !== 'results') throw new Error(reading.kind);
    expect(reading.results.members).toMatchObject([
      {
        mark: 'B1',
        results: {
          // 8.4 kip at 6 ft of 21 ft: 8.4 · 15/21 = 6.0 and 8.4 · 6/21 = 2.4; moment 6.0 · 6 = 36.
          all: {
            reactions: [
              { point: 'A', x: { value: 0 }, y: { value: 6 } },
              { point: 'C', x: null, y: { value: 2.4 } },
            ],
            moment: {
              max: { value: 36, unit: 'kip ft', at: { value: 6, unit: 'ft' } },
            },
          },
        },
      },
    ]);
  });

  test('the same folder gives the same bytes', async () => {
    const once = await bindProject(memoryWorld(files), 'depot', { program });
    const again = await bindProject(memoryWorld(files), 'depot', { program });
    expect(once.pdf?.length).toBeGreaterThan(10_000);
    expect(once.pdf).toEqual(again.pdf);
    expect(once.json).toBe(again.json);
    expect(once.sheets?.['member-B1']).toBeGreaterThan(2);
  });

  test('an unstable member stops the package and is named at its supports', async () => {
    const world = memoryWorld({
      ...files,
      'depot/members/B2.yaml': beam('B2', '{ A: roller, C: roller }'),
    });
    const bound = await bindProject(world, 'depot', { program });
    expect(bound.pdf).toBeUndefined();
    expect(bound.diagnostics).toMatchObject([
      { code: 'unstable', member: 'B2', span: { file: 'members/B2.yaml' } },
    ]);
  });

  test('with keepGoing the others are bound and the member has its error on its own sheet', async () => {
    const world = memoryWorld({
      ...files,
      'depot/members/B2.yaml': beam('B2', '{ A: roller, C: roller }'),
    });
    const bound = await bindProject(world, 'depot', { program, keepGoing: true });
    expect(bound.pdf).toBeDefined();
    expect(Object.keys(bound.sheets ?? {})).toEqual(
      expect.arrayContaining(['member-B1', 'member-B2']),
    );
    expect(bound.json).toContain('"code": "unstable"');
  });

  test('a project’s own template stands in place of the program’s', async () => {
    const world = memoryWorld({
      ...files,
      'depot/report-templates/cautions.hbs':
        '<h1 id="cautions">Cautions</h1><p>{{#each nothing}}',
    });
    const bound = await bindProject(world, 'depot', { program });
    expect(bound.pdf).toBeUndefined();
    expect(bound.diagnostics).toMatchObject([{ code: 'template-fault' }]);
    expect(bound.diagnostics[0]?.message).toContain('report-templates/cautions.hbs');
  });

  test('a member that leans on an unsolved one is not solved and says so', () => {
    const world = memoryWorld({
      ...files,
      'depot/members/B2.yaml': beam('B2', '{ A: roller, C: roller }'),
      'depot/members/G1.yaml':
        beam('G1', '{ A: pin, C: roller }') + '  - { reaction: B2.A, at: B }\n',
    });
    const worked = workProject(world, 'depot');
    expect(worked.diagnostics.map(({ code, member }) => [code, member])).toEqual([
      ['unstable', 'B2'],
      ['depends-on-unsolved', 'G1'],
    ]);
  });

  test('carried reactions arrive at the ground: applied loads equal the reactions of the last member', () => {
    const world = memoryWorld({
      ...files,
      'depot/members/G1.yaml':
        'mark: G1\nkind: beam\npoints: { P: 0 ft, Q: 10 ft, R: 30 ft }\nsupports: { P: pin, R: roller }\nloads:\n  - { reaction: B1.A, at: Q, times: 2 }\n',
    });
    const reading = readResults(resultsOf(workProject(world, 'depot')));
    if (reading.kind !== 'results') throw new Error(reading.kind);
    const girder = reading.results.members.find(({ mark }) => mark === 'G1');
    // Twice 6.0 kip at 10 ft of 30 ft: 12 · 20/30 = 8 and 12 · 10/30 = 4.
    expect(girder).toMatchObject({
      results: { all: { reactions: [{ y: { value: 8 } }, { y: { value: 4 } }] } },
    });
  });
});

describe('a bound PDF carries', () => {
  const whole = {
    ...files,
    // A byte order mark, which a text read and written again would lose.
    'depot/loads.yaml': '\ufeffcases: { L: { title: Live, kind: live } }\n',
    'depot/members/B1.yaml': files['depot/members/B1.yaml'].replace(
      'point: 8.4',
      'case: L, point: 8.4',
    ),
    'depot/worked/b1.yaml': 'member: B1\nsteps: []\n',
    'depot/images/logo.png': new Uint8Array([1, 2, 3]),
    'depot/report-templates/cautions.hbs': '<p>None.</p>\n',
    'depot/notes.txt': 'not read',
  };

  test('every file of the folder that was read, to the byte, and no other', async () => {
    const { pdf, sources, json } = await bindProject(memoryWorld(whole), 'depot', {
      program,
    });
    const file = readPdf(pdf ?? new Uint8Array());
    if ('problem' in file) throw new Error(file.problem);
    const attached = readAttachments(file);
    const expected = Object.entries(bytesByName(whole)).filter(
      ([name]) => name !== 'notes.txt',
    );
    expect(
      Object.fromEntries(attached.map(({ name, bytes }) => [name, bytes])),
    ).toEqual({
      ...Object.fromEntries(expected),
      'results.json': new TextEncoder().encode(json),
    });
    expect(sources?.map(({ path }) => path).toSorted()).toEqual(
      expected.map(([name]) => name).toSorted(),
    );
    expect(attached.find(({ name }) => name === 'images/logo.png')?.mime).toBe(
      'image/png',
    );
  }, 60_000);
});

function bytesByName(
  given: Readonly<Record<string, string | Uint8Array>>,
): Readonly<Record<string, Uint8Array>> {
  return Object.fromEntries(
    [...memoryWorld(given).files].map(([path, bytes]) => [path.slice(6), bytes]),
  );
}
