import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  compareFigures,
  type FigureComparison,
} from '../../../src/archive/verifying/compare-figures.ts';
import { resultsOf, workProject } from '../../../src/index.ts';
import type {
  BeamResults,
  EntryResults,
  RangeExtremeFigures,
  Results,
} from '../../../src/results/index.ts';
import { memoryWorld } from '../../../src/world/index.ts';

const yaml = {
  'p/project.yaml':
    'project: { title: Weir crossing, number: W-3 }\nunits: us\ncriteria: { deflection_limits: { L: L/360 } }\n',
  'p/loads.yaml':
    'cases: { D: { kind: dead }, L: { kind: live, pattern: true } }\ncombinations: [ asce7-strength ]\n',
  'p/members/b1.yaml': [
    'mark: B1',
    'kind: beam',
    'points: { A: 0 ft, B: 12 ft, C: 20 ft }',
    'supports: { A: pin, B: roller, C: roller }',
    'section: { I: 100 in^4 }',
    'material: { E: 29000 ksi }',
    'loads: [ { case: D, uniform: 0.5 kip/ft }, { case: L, uniform: 1 kip/ft } ]',
    '',
  ].join('\n'),
  'p/members/b2.yaml':
    'mark: B2\nkind: beam\npoints: { A: 0 ft, B: 10 ft }\nsupports: { A: pin, B: roller }\nloads: [ { case: L, point: 4 kip, at: 5 ft } ]\n',
};
const worked = workProject(memoryWorld(yaml), 'p');
const text = resultsOf(worked, { stations: 4 });

type Writable<T> = T extends object ? { -readonly [K in keyof T]: Writable<T[K]> } : T;

/** results.json open to changes, its members known to be solved and its entries to have one state. */
type Loose = Writable<
  Omit<Results, 'members'> & {
    members: (Omit<BeamResults, 'results'> & {
      results: Record<string, EntryResults>;
    })[];
  }
>;

const results = (): Loose => JSON.parse(text) as Loose;

/** The results with something changed. */
function changed(change: (all: Loose) => unknown): Loose {
  const all = results();
  change(all);
  return all;
}

/** The member and the entry that most changes are made in. */
const b2 = (all: Loose): Loose['members'][number] => all.members[1]!;
const live = (all: Loose): Writable<EntryResults> => b2(all).results.L!;

const compared = (one: Loose, other: Loose): FigureComparison =>
  compareFigures(one, other);

type Keyed = Record<string | number, unknown>;

describe('comparing the figures of two results.json', () => {
  test('finds none between equal ones, having compared every number', () => {
    const { differences, figures, greatest, remarks } = compareFigures(
      results(),
      results(),
    );
    expect([differences, greatest, remarks]).toEqual([[], 0, []]);
    const numbers = text.match(/: -?\d[\d.e+-]*/gu)?.length ?? 0;
    // Every number of the text but `format`.
    expect(figures).toBe(numbers - 1);
    expect(figures).toBeGreaterThan(500);
  });

  test('names a figure that differs, with both values and its share of the greatest of its kind', () => {
    const other = changed((all) => (live(all).moment.max.value = 10.001));
    // 4 kip at midspan of 10 ft: 10 kip ft; factored by 1.6 it is 16, the greatest moment of B2.
    expect(compared(results(), other)).toMatchObject({
      differences: [
        {
          member: 'B2',
          what: 'result L, moment max',
          archived: '10 kip ft',
          computed: '10.001 kip ft',
          share: expect.closeTo(0.001 / 16, 12) as number,
        },
      ],
    });
  });

  test('takes rounding for agreement, and no more than that', () => {
    const nudged = (share: number): Loose =>
      changed((all) => (live(all).moment.max.value += 16 * share));
    expect(compared(results(), nudged(5e-10)).differences).toEqual([]);
    expect(compared(results(), nudged(2e-9)).differences).toHaveLength(1);
    expect(compared(results(), nudged(2e-9)).greatest).toBeCloseTo(2e-9, 12);
  });

  test('measures a residual by the terms of its own sum', () => {
    const index = b2(results()).closure.findIndex(({ scale }) => scale.value > 0);
    const { scale } = b2(results()).closure[index]!;
    const other = changed((all) => (b2(all).closure[index]!.residual.value += 1e-6));
    const [difference] = compared(results(), other).differences;
    expect(difference?.what).toMatch(/^closure of .*, residual$/u);
    expect(difference?.share).toBeCloseTo(1e-6 / scale.value, 12);
  });

  test('compares by meaning, whatever the order', () => {
    const other = changed((all) => {
      all.members.reverse();
      for (const member of all.members) {
        member.checks.reverse();
        member.closure.reverse();
        member.results = Object.fromEntries(Object.entries(member.results).reverse());
        for (const { reactions } of Object.values<{ reactions: unknown[] }>(
          member.results,
        ))
          reactions.reverse();
      }
    });
    expect(compared(results(), other).differences).toEqual([]);
  });

  test.each([
    ['a member', (all: Loose) => all.members.pop(), 'B2', 'the member'],
    ['an entry', (all: Loose) => delete b2(all).results.L, 'B2', 'result L'],
    [
      'a reaction',
      (all: Loose) => live(all).reactions.pop(),
      'B2',
      'result L, reaction B',
    ],
    [
      'a check',
      (all: Loose) => all.members[0]?.checks.shift(),
      'B1',
      /^check deflection/u,
    ],
    [
      'a station',
      (all: Loose) => live(all).stations?.pop(),
      'B2',
      'result L, station 5',
    ],
  ] as const)(
    'tells once that %s is missing, on either side',
    (_, take, member, what) => {
      const less = changed(take);
      const lost = compared(results(), less).differences;
      expect(lost).toEqual([
        { member, what: expect.stringMatching(what) as string, archived: 'given' },
      ]);
      const gained = compared(less, results()).differences;
      expect(gained).toEqual([
        { member, what: expect.stringMatching(what) as string, computed: 'given' },
      ]);
    },
  );

  test('compares texts exactly: governing entries, arrangements, whether a check passes', () => {
    const other = changed((all) => {
      const beam = all.members[0]!;
      beam.envelope.moment.min.result = 'L';
      const { max } = beam.results.L!.moment as Writable<RangeExtremeFigures>;
      max.arrangement.spans[0]!.from = 'B';
      beam.checks[0]!.passes = !beam.checks[0]!.passes;
    });
    const told = compared(results(), other).differences.map(({ what }) => what);
    expect(told).toEqual([
      'result L, moment max, arrangement, span 1, from',
      'envelope, moment min, governing entry',
      expect.stringMatching(/^check deflection .*, whether it passes$/u),
    ]);
  });

  test('tells a member that has an error now by its code alone', () => {
    const failed = (message: string): Loose =>
      changed((all) => {
        const error = { code: 'unstable', message };
        all.members[1] = {
          mark: 'B2',
          kind: 'beam',
          error,
        } as unknown as Loose['members'][number];
      });
    expect(compared(results(), failed('it turns')).differences).toEqual([
      { member: 'B2', what: 'results', archived: 'given', computed: 'error unstable' },
    ]);
    expect(compared(failed('it turns'), failed('it slides')).differences).toEqual([]);
  });

  test('leaves sheet numbers out', () => {
    const other = changed((all) => (b2(all).sheet = 9));
    expect(compared(results(), other).differences).toEqual([]);
  });

  test('remarks on what only a later format gives, once, and tells what it no longer gives', () => {
    const older = changed((all) => {
      for (const member of all.members) Reflect.deleteProperty(member, 'envelopes');
    });
    const grown = compared(older, results());
    expect(grown.differences).toEqual([]);
    expect(grown.remarks).toEqual([
      'this version also gives envelope by purpose, which the archived results do not have',
    ]);
    expect(compared(results(), older).differences).toHaveLength(2);
  });

  test('an entry may bear any mark, also that of a key of the format', () => {
    const named = (moment: number): Loose =>
      changed((all) => {
        for (const mark of ['sheet', 'error', 'constructor', '__proto__'])
          Object.defineProperty(b2(all).results, mark, {
            enumerable: true,
            value: { moment: { max: { value: moment, unit: 'kip ft' } } },
          });
      });
    const told = compared(named(1), named(2)).differences.map(({ what }) => what);
    expect(told).toEqual(
      ['sheet', 'error', 'constructor', '__proto__'].map(
        (mark) => `result ${mark}, moment max`,
      ),
    );
  });

  test('finds any number that is changed, wherever it stands', () => {
    const places: (readonly (string | number)[])[] = [];
    const visit = (value: unknown, path: readonly (string | number)[]): void => {
      if (typeof value === 'number') places.push(path);
      else if (typeof value === 'object' && value !== null)
        for (const [key, inner] of Object.entries(value)) visit(inner, [...path, key]);
    };
    visit(results().members, ['members']);
    fc.assert(
      fc.property(fc.constantFrom(...places), (path) => {
        const other = changed((all) => {
          const owner = path
            .slice(0, -1)
            .reduce<unknown>((inner, key) => (inner as Keyed)[key], all) as Keyed;
          const key = path.at(-1)!;
          owner[key] = Number(owner[key]) + 1;
        });
        const { differences } = compared(results(), other);
        // One figure, or the place that a list is ordered by.
        expect(differences.length).toBeGreaterThan(0);
        expect(differences.length).toBeLessThan(3);
      }),
      { numRuns: 60 },
    );
  });
});
