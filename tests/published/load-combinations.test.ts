import { describe, expect, test } from 'vitest';
import {
  expandClause,
  take,
  type Clause,
} from '../../src/standards/combinations/clause.ts';
import {
  namedCombinations,
  type CombinationCase,
  type NamedSetName,
} from '../../src/standards/index.ts';
import { expectPrinted } from '../support/in-words.ts';

/*
 * Lists of combinations in D, L, Lr and W. "Course slide": Load combinations, ASCE 7-05 and 7-10
 * (scribd.com/document/615433919), seen. The 7-22 list is from memory of 2.3.1.
 */
const cases: CombinationCase[] = [
  { mark: 'D', kind: 'dead' },
  { mark: 'L', kind: 'live' },
  { mark: 'Lr', kind: 'roof-live' },
  { mark: 'W', kind: 'wind' },
];

/** Sums as sets of terms, whatever the order in which a page writes them. */
const asSets = (sums: readonly string[]): Set<string> =>
  new Set(
    sums.map((sum) =>
      sum
        .replaceAll(' ', '')
        .split('+')
        .map((term) => term.replace(/^1(?:\.0)?(?=[A-Z])/, ''))
        .toSorted()
        .join('+'),
    ),
  );

const listed = (
  name: NamedSetName,
  standard: string,
  given: readonly CombinationCase[] = cases,
): string[] =>
  namedCombinations(
    { name },
    { cases: given, alternatives: [], standards: [standard] },
  ).combinations.map((entry) => entry.mark);

describe('ASCE 7-10, course slide', () => {
  test('strength', () => {
    const printed = [
      '1.4D',
      '1.2D + 1.6L + 0.5Lr',
      '1.2D + 1.6Lr + 1.0L',
      '1.2D + 1.6Lr + 0.5W',
      '1.2D + 1.0W + 1.0L + 0.5Lr',
      '0.9D + 1.0W',
    ];
    expect(asSets(listed('asce7-strength', 'ASCE 7-10'))).toEqual(asSets(printed));
  });

  test('allowable', () => {
    const printed = [
      'D',
      'D + L',
      'D + Lr',
      'D + 0.75L + 0.75Lr',
      'D + 0.6W',
      'D + 0.75L + 0.75Lr + 0.45W',
      '0.6D + 0.6W',
    ];
    expect(asSets(listed('asce7-allowable', 'ASCE 7-10'))).toEqual(asSets(printed));
  });

  test('7-16 keeps these terms', () => {
    for (const name of ['asce7-strength', 'asce7-allowable'] as const) {
      expect(listed(name, 'ASCE 7-16')).toEqual(listed(name, 'ASCE 7-10'));
    }
  });
});

describe('ASCE 7-05, course slide', () => {
  // The program does not offer this edition; its clauses test how clauses are worked out.
  const roof = take('roof-live', 1.6);
  const liveOrWind = {
    oneOf: [
      { kind: 'live', factor: 1 },
      { kind: 'wind', factor: 0.8 },
    ],
  } as const;
  const strength: Clause[] = [
    { number: '1', terms: [take('dead', 1.4)] },
    {
      number: '2',
      terms: [take('dead', 1.2), take('live', 1.6), take('roof-live', 0.5)],
    },
    { number: '3', terms: [take('dead', 1.2), roof, liveOrWind] },
    {
      number: '4',
      terms: [
        take('dead', 1.2),
        take('wind', 1.6),
        take('live', 1),
        take('roof-live', 0.5),
      ],
    },
    { number: '6', terms: [take('dead', 0.9), take('wind', 1.6)] },
  ];

  test('strength', () => {
    const printed = [
      '1.4D',
      '1.2D + 1.6L + 0.5Lr',
      '1.2D + 1.6Lr + 1.0L',
      '1.2D + 1.6Lr + 0.8W',
      '1.2D + 1.6W + 1.0L + 0.5Lr',
      '0.9D + 1.6W',
    ];
    const found = strength.flatMap((clause) =>
      [...expandClause(clause, cases, () => false)].map((entry) => entry.mark),
    );
    expect(asSets(found)).toEqual(asSets(printed));
  });
});

describe('ASCE 7-22 2.3.1 (from memory)', () => {
  test('strength with snow and rain: every "or" written out', () => {
    const withSnow: CombinationCase[] = [
      ...cases,
      { mark: 'S', kind: 'snow' },
      { mark: 'R', kind: 'rain' },
    ];
    const printed = [
      '1.4D',
      '1.2D + 1.6L + 0.5Lr',
      '1.2D + 1.6L + 0.3S',
      '1.2D + 1.6L + 0.5R',
      '1.2D + 1.6Lr + L',
      '1.2D + 1.6Lr + 0.5W',
      '1.2D + 1.0S + L',
      '1.2D + 1.0S + 0.5W',
      '1.2D + 1.6R + L',
      '1.2D + 1.6R + 0.5W',
      '1.2D + 1.0W + L + 0.5Lr',
      '1.2D + 1.0W + L + 0.3S',
      '1.2D + 1.0W + L + 0.5R',
      '0.9D + 1.0W',
    ];
    const found = listed('asce7-strength', 'ASCE/SEI 7-22', withSnow);
    expect(found).toHaveLength(printed.length);
    expect(asSets(found)).toEqual(asSets(printed));
  });
});

describe('EN 1990, Worked Examples to Eurocode 2 (eurocode.us), seen', () => {
  test('6.10b with xi = 0.925: 1.25 × 30.2 + 1.5 × 11.5 = 55.0 kN/m', () => {
    const { combinations } = namedCombinations(
      { name: 'en1990-uls', expression: '6.10ab', national: { xi: 0.925 } },
      {
        cases: [
          { mark: 'g', kind: 'dead' },
          { mark: 'q', kind: 'live', category: 'A' },
        ],
        alternatives: [],
        standards: [],
      },
    );
    const entry = combinations.find((c) => c.mark === '1.25g + 1.5q');
    expect(entry?.clauses[0]).toContain('(6.10b)');
    const loads: Record<string, number> = { g: 30.2, q: 11.5 };
    const sum = entry!.factors.reduce(
      (all, term) => all + term.factor * loads[term.case]!,
      0,
    );
    expectPrinted(sum, '55.0');
  });
});
