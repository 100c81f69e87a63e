import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { LoadsDefinition } from '../../../src/project/definitions.ts';
import {
  combinationsFor,
  namedSetNames,
  sameTerms,
  type CombinationCase,
  type CombinationRequest,
} from '../../../src/standards/index.ts';

const cases: CombinationCase[] = [
  { mark: 'D', kind: 'dead' },
  { mark: 'L', kind: 'live', category: 'B' },
  { mark: 'E', kind: 'seismic' },
];
const all = (...combinations: CombinationRequest[]) =>
  combinationsFor({ cases, alternatives: [], standards: ['ASCE 7-22'], combinations });
const own = (
  mark: string,
  factors: Record<string, number>,
  purpose: 'strength' | 'service' = 'strength',
): CombinationRequest => ({ kind: 'custom', mark, factors, for: purpose });

describe('combinationsFor', () => {
  test('lists sets and own combinations in the order asked for', () => {
    const list = all(
      own('1.0D + 0.5L', { D: 1, L: 0.5 }, 'service'),
      { kind: 'named-set', name: 'asce7-strength' },
      own('Quake', { D: 1.2, E: 1, L: 0.5 }),
    );
    expect(list.combinations.map((entry) => entry.mark)).toEqual([
      '1.0D + 0.5L',
      '1.4D',
      '1.2D + 1.6L',
      '1.2D + L',
      '0.9D',
      'Quake',
    ]);
    expect(list.problems).toEqual([]);
    expect(list.untaken).toEqual([]);
  });

  test('tells why a case that no combination takes is left out', () => {
    const list = all({ kind: 'named-set', name: 'asce7-strength' });
    expect(list.untaken).toEqual([
      {
        case: 'E',
        why: "A seismic case is combined by ASCE/SEI 7-22 2.3.6, which needs a list of the project's own.",
      },
    ]);
    expect(all(own('Dead', { D: 1 })).untaken.map((entry) => entry.why)).toEqual([
      'No combination names case L.',
      'No combination names case E.',
    ]);
  });

  test('calls nothing left out where no combinations are asked for', () => {
    expect(all().untaken).toEqual([]);
  });

  test('merges an own combination into a set’s, and tells of the lost mark', () => {
    const list = all(
      { kind: 'named-set', name: 'asce7-strength' },
      own('Floor', { L: 1.6, D: 1.2 }),
    );
    const entry = list.combinations.find((c) => c.mark === '1.2D + 1.6L');
    expect(entry?.clauses).toEqual(['ASCE/SEI 7-22 2.3.1 (2)', 'project']);
    expect(list.notes.map((note) => note.text)).toContain(
      "The project's combination Floor has the terms of 1.2D + 1.6L and stands under that mark.",
    );
  });

  test.each<[string, CombinationRequest[], string]>([
    [
      'a mark of a named set',
      [
        { kind: 'named-set', name: 'asce7-strength' },
        own('1.2D + 1.6L', { D: 1.3, L: 1.6 }),
      ],
      'the mark 1.2D + 1.6L is that of a combination by ASCE/SEI 7-22 2.3.1 (2)',
    ],
    [
      'a mark used twice',
      [own('Mine', { D: 1 }), own('Mine', { D: 1.1 })],
      'two combinations are marked Mine',
    ],
    [
      'a case’s mark for something else',
      [own('L', { D: 1, L: 1 })],
      'the mark L is that of a load case',
    ],
    [
      'a case that is not there',
      [own('Snowy', { D: 1, S: 1 })],
      'combination Snowy names case S, which the project does not have',
    ],
  ])('refuses %s', (_title, requests, message) => {
    expect(all(...requests).problems.map((problem) => problem.message)).toEqual([
      message,
    ]);
  });

  test('lets a combination marked like a case be that case', () => {
    expect(all(own('L', { L: 1 })).problems).toEqual([]);
  });

  test('refuses a set that gives nothing', () => {
    const list = combinationsFor({
      cases: [{ mark: 'all' }],
      alternatives: [],
      standards: [],
      combinations: [{ kind: 'named-set', name: 'en1990-sls' }],
    });
    expect(list.problems.map((problem) => problem.message)).toEqual([
      'no load case is of a kind that en1990-sls combines',
    ]);
  });

  test('takes the loads of a project as they are defined', () => {
    const span = { file: 'loads.yaml', start: 0, end: 4 };
    const loads: LoadsDefinition = {
      given: true,
      cases: [{ mark: 'D', kind: 'dead', title: 'Dead', pattern: false }],
      areas: {},
      combinations: [
        { kind: 'named-set', name: 'asce7-strength', span },
        { kind: 'custom', mark: 'Twice', factors: { D: 2 }, for: 'strength', span },
      ],
      alternatives: [],
    };
    const { combinations } = combinationsFor({ ...loads, standards: [] });
    expect(combinations.map((entry) => entry.mark)).toEqual([
      '1.4D',
      '1.2D',
      '0.9D',
      'Twice',
    ]);
  });

  test('says each sentence once', () => {
    const twice = all(
      { kind: 'named-set', name: 'en1990-uls' },
      { kind: 'named-set', name: 'en1990-sls' },
    );
    const texts = twice.notes.map((note) => note.text);
    expect(new Set(texts).size).toBe(texts.length);
  });
});

const kinds = [
  'dead',
  'live',
  'roof-live',
  'snow',
  'rain',
  'wind',
  'earth',
  'fluid',
  'temperature',
] as const;
const anyCases = fc
  .array(fc.constantFrom(...kinds), { minLength: 1, maxLength: 6 })
  .map((list) =>
    list.map((kind, index): CombinationCase => ({ mark: `C${index}`, kind })),
  );

describe('combinationsFor, whatever the cases', () => {
  test('never repeats a sum of one purpose, and one mark always means one sum', () => {
    fc.assert(
      fc.property(anyCases, fc.subarray([...namedSetNames]), (given, names) => {
        const { combinations } = combinationsFor({
          cases: given,
          alternatives: [['C0', 'C1']],
          standards: [],
          combinations: names.map((name) => ({ kind: 'named-set', name })),
        });
        for (const [index, entry] of combinations.entries()) {
          for (const other of combinations.slice(index + 1)) {
            const same = sameTerms(entry.factors, other.factors);
            if (entry.for === other.for) expect(same).toBe(false);
            if (entry.mark === other.mark) expect(same).toBe(true);
          }
        }
      }),
      { numRuns: 60 },
    );
  });

  test('never sets two winds, or two alternatives, in one sum', () => {
    fc.assert(
      fc.property(anyCases, fc.constantFrom(...namedSetNames), (given, name) => {
        const { combinations } = combinationsFor({
          cases: given,
          alternatives: [['C0', 'C1']],
          standards: [],
          combinations: [{ kind: 'named-set', name }],
        });
        for (const entry of combinations) {
          const marks = entry.factors.map((term) => term.case);
          const winds = given.filter(
            (c) => c.kind === 'wind' && marks.includes(c.mark),
          );
          expect(winds.length).toBeLessThan(2);
          expect(marks.includes('C0') && marks.includes('C1')).toBe(false);
          expect(new Set(marks).size).toBe(marks.length);
        }
      }),
      { numRuns: 100 },
    );
  });
});
