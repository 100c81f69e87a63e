import { describe, expect, test } from 'vitest';
import {
  workAgain as work,
  type Rework,
  type Reworked,
} from '../../../src/archive/verifying/work-again.ts';
import type { Json } from '../../../src/archive/verifying/json.ts';
import { resultsOf, workProject } from '../../../src/index.ts';
import { memoryWorld } from '../../../src/world/index.ts';
import { sluiceFiles } from '../../support/archived-sluice.ts';

const world = memoryWorld({});
const encoder = new TextEncoder();
const filesOf = (
  texts: Readonly<Record<string, string>>,
): { readonly path: string; readonly bytes: Uint8Array }[] =>
  Object.entries(texts).map(([path, text]) => ({ path, bytes: encoder.encode(text) }));
const files = filesOf(sluiceFiles);

/** results.json of the sluice house, as it would have been archived. */
function archivedResults(options: Parameters<typeof resultsOf>[1] = {}): string {
  const placed = Object.entries(sluiceFiles).map(([path, text]) => [`p/${path}`, text]);
  const folder = memoryWorld(Object.fromEntries(placed) as Record<string, string>);
  return resultsOf(workProject(folder, 'p'), options);
}
const workAgain = (rework: Rework): Reworked['found'] => work(rework).found;
const json = (text: string): Json => JSON.parse(text) as Json;

describe('working an archive again', () => {
  test('finds the figures that were archived, stations and all', () => {
    const without = workAgain({
      world,
      files,
      archived: json(archivedResults()),
      isAsIs: false,
    });
    const archived = json(archivedResults({ stations: 6 }));
    const found = workAgain({ world, files, archived, isAsIs: false });
    expect([without.verdict, found.verdict]).toEqual(['intact', 'intact']);
    // Three numbers and more at each of seven stations of every entry.
    expect(found.compared!.figures).toBeGreaterThan(without.compared!.figures + 7 * 3);
  });

  test('names what is computed differently, and by how much', () => {
    // 12 ft under 1 kip/ft: 1 · 12²/8 = 18 kip ft under L.
    const text = archivedResults();
    const archived = json(text.replace('"value": 18,', '"value": 18.5,'));
    expect(workAgain({ world, files, archived, isAsIs: false })).toMatchObject({
      verdict: 'differs',
      differences: [
        {
          member: 'B1',
          what: 'result L, moment max',
          archived: '18.5 kip ft',
          computed: '18 kip ft',
        },
      ],
    });
  });

  test('says so where this version cannot read what an earlier one could', () => {
    const unread = filesOf({ ...sluiceFiles, 'project.yaml': 'units: furlongs\n' });
    const archived = json(archivedResults());
    expect(workAgain({ world, files: unread, archived, isAsIs: false })).toMatchObject({
      verdict: 'differs',
      differences: [{ member: '', what: 'the project', archived: 'given' }],
    });
    const asIs = workAgain({ world, files: unread, archived, isAsIs: true });
    expect(asIs).toMatchObject({ verdict: 'not recomputed', differences: [] });
    expect(asIs.remarks[0]).toMatch(/^its inputs cannot be worked: error /u);
  });

  test('takes an excerpt for what it is only where one may be', () => {
    const archived = json(archivedResults());
    const more = [
      ...files,
      ...filesOf({
        'members/b2.yaml': sluiceFiles['members/b1.yaml']!.replace('B1', 'B2'),
      }),
    ];
    const excerpt = workAgain({
      world,
      files: more,
      archived,
      isAsIs: false,
      isExcerpt: true,
    });
    expect(excerpt).toMatchObject({
      verdict: 'intact',
      remarks: ['it holds 1 of the 2 members of its project'],
    });
    const whole = workAgain({ world, files: more, archived, isAsIs: false });
    expect(whole.differences).toEqual([
      { member: 'B2', what: 'the member', computed: 'given' },
    ]);
  });

  test('files that belong to no project folder are not looked at', () => {
    const strange = [
      ...files,
      ...filesOf({ '../project.yaml': '', 'members/a/b.yaml': '' }),
    ];
    const archived = json(archivedResults());
    expect(workAgain({ world, files: strange, archived, isAsIs: false }).verdict).toBe(
      'intact',
    );
  });
});
