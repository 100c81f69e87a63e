import { describe, expect, test } from 'vitest';
import {
  expandClause,
  take,
  type Clause,
} from '../../../src/standards/combinations/clause.ts';
import type { CombinationCase } from '../../../src/standards/index.ts';

const cases = (...marks: readonly (readonly [string, CombinationCase['kind']])[]) =>
  marks.map(([mark, kind]): CombinationCase => ({
    mark,
    ...(kind === undefined ? {} : { kind }),
  }));
const never = (): boolean => false;
const marksOf = (clause: Clause, given: readonly CombinationCase[]): string[] =>
  [...expandClause(clause, given, never)].map((entry) => entry.mark);

const roofThenLive: Clause = {
  number: '3',
  terms: [
    take('dead', 1.2),
    {
      oneOf: [
        { kind: 'roof-live', factor: 1.6 },
        { kind: 'snow', factor: 1 },
      ],
    },
    {
      oneOf: [
        { kind: 'live', factor: 1 },
        { kind: 'wind', factor: 0.5 },
      ],
    },
  ],
};

describe('expandClause', () => {
  test('gives an entry for each way through the clause’s "or"s', () => {
    const all = cases(
      ['D', 'dead'],
      ['L', 'live'],
      ['Lr', 'roof-live'],
      ['S', 'snow'],
      ['W', 'wind'],
    );
    expect(marksOf(roofThenLive, all)).toEqual([
      '1.2D + 1.6Lr + L',
      '1.2D + 1.6Lr + 0.5W',
      '1.2D + S + L',
      '1.2D + S + 0.5W',
    ]);
  });

  test('drops kinds that the project does not have', () => {
    expect(marksOf(roofThenLive, cases(['D', 'dead'], ['L', 'live']))).toEqual([
      '1.2D + L',
    ]);
    expect(marksOf(roofThenLive, cases(['Q', undefined]))).toEqual([]);
  });

  test('stands cases of one kind side by side, in the order of the project', () => {
    expect(
      marksOf(roofThenLive, cases(['D2', 'dead'], ['L', 'live'], ['D1', 'dead'])),
    ).toEqual(['1.2D2 + 1.2D1 + L']);
  });

  test('stands with and without a load that may relieve', () => {
    const clause: Clause = {
      number: '2',
      terms: [take('dead', 1.2), { ...take('earth', 1.6), orLeftOut: true }],
    };
    expect(marksOf(clause, cases(['D', 'dead'], ['H', 'earth']))).toEqual([
      '1.2D + 1.6H',
      '1.2D',
    ]);
    expect(marksOf(clause, cases(['D', 'dead']))).toEqual(['1.2D']);
  });

  test('spreads cases that exclude one another over entries', () => {
    const given = cases(['D', 'dead'], ['L1', 'live'], ['L2', 'live']);
    const excludes = (a: string, b: string): boolean =>
      a !== b && a.startsWith('L') && b.startsWith('L');
    const marks = [...expandClause(roofThenLive, given, excludes)].map((e) => e.mark);
    expect(marks).toEqual(['1.2D + L1', '1.2D + L2']);
  });
});
