import { describe, expect, test } from 'vitest';
import {
  namedCombinations,
  type CombinationCase,
} from '../../../src/standards/index.ts';

const cases: CombinationCase[] = [
  { mark: 'D', kind: 'dead' },
  { mark: 'L', kind: 'live' },
  { mark: 'S', kind: 'snow' },
  { mark: 'W', kind: 'wind' },
];
const list = (given: readonly CombinationCase[], standard: string) =>
  namedCombinations(
    { name: 'asce7-allowable' },
    { cases: given, alternatives: [], standards: [standard] },
  ).combinations;

describe('asce7-allowable', () => {
  test('takes 0.7S in 7-22', () => {
    expect(list(cases, 'ASCE/SEI 7-22').map((entry) => entry.mark)).toEqual([
      'D',
      'D + L',
      'D + 0.7S',
      'D + 0.75L + 0.525S',
      'D + 0.6W',
      'D + 0.75L + 0.45W + 0.525S',
      '0.6D + 0.6W',
    ]);
  });

  test('takes S in 7-16', () => {
    expect(list(cases, 'ASCE 7-16').map((entry) => entry.mark)).toEqual([
      'D',
      'D + L',
      'D + S',
      'D + 0.75L + 0.75S',
      'D + 0.6W',
      'D + 0.75L + 0.45W + 0.75S',
      '0.6D + 0.6W',
    ]);
  });

  test('merges what comes out as dead load alone, with every clause', () => {
    const [first] = list(cases.slice(0, 1), 'ASCE 7-16');
    expect(first?.mark).toBe('D');
    expect(first?.clauses).toEqual(
      [1, 2, 3, 4, 5, 6].map((number) => `ASCE/SEI 7-16 2.4.1 (${number})`),
    );
  });

  test('leaves fluids out beside 0.6D', () => {
    const wet: CombinationCase[] = [
      { mark: 'D', kind: 'dead' },
      { mark: 'F', kind: 'fluid' },
    ];
    expect(list(wet, 'ASCE 7-22').map((entry) => entry.mark)).toEqual([
      'D + F',
      '0.6D',
    ]);
  });

  test('is for service, since its loads are at service level', () => {
    expect(list(cases, 'ASCE 7-22').every((entry) => entry.for === 'service')).toBe(
      true,
    );
  });
});
