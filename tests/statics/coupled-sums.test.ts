import { describe, expect, test } from 'vitest';
import type { CandidateSum } from '../../src/statics/candidate-sums.ts';
import { coupledSums } from '../../src/statics/coupled-sums.ts';

/** A candidate with these factors for a, b, c, d. */
function candidate(about: number, ...factors: readonly number[]): CandidateSum {
  const entries = factors.map((factor, index) => ({
    unknown: { kind: 'reaction', point: 'abcd'[index]!, index: 0 } as const,
    key: 'abcd'[index]!,
    factor,
  }));
  return {
    part: { from: 0, to: 1 },
    pieces: 1,
    sum: { kind: 'moments', about },
    entries,
    through: 0,
  };
}

describe('coupledSums', () => {
  test('takes two sums that hold the same two unknowns before three', () => {
    const found = coupledSums(
      [candidate(1, 1, 1, 1), candidate(2, 0, 1, 2), candidate(3, 0, 2, 1)],
      ['a', 'b', 'c'],
    );
    expect(found?.finds).toEqual(['b', 'c']);
    expect(found?.sums.map(({ sum }) => sum)).toEqual([
      { kind: 'moments', about: 2 },
      { kind: 'moments', about: 3 },
    ]);
  });

  test('passes over a sum that only repeats another', () => {
    const found = coupledSums(
      [candidate(1, 1, 2), candidate(2, 2, 4), candidate(3, 1, -1)],
      ['a', 'b'],
    );
    expect(found?.sums.map(({ sum }) => sum)).toEqual([
      { kind: 'moments', about: 1 },
      { kind: 'moments', about: 3 },
    ]);
  });

  test('minds only the unknowns that remain', () => {
    const found = coupledSums(
      [candidate(1, 5, 1, 1), candidate(2, 7, 1, -1)],
      ['b', 'c'],
    );
    expect(found?.finds).toEqual(['b', 'c']);
  });

  test('takes all that are left where no three suffice', () => {
    const found = coupledSums(
      [
        candidate(1, 1, 1, 1, 1),
        candidate(2, 1, 2, 3, 4),
        candidate(3, 1, 4, 9, 16),
        candidate(4, 1, 8, 27, 64),
      ],
      ['a', 'b', 'c', 'd'],
    );
    expect(found?.sums).toHaveLength(4);
  });

  test('finds nothing where sums are too few', () => {
    expect(coupledSums([candidate(1, 1, 2)], ['a', 'b'])).toBeUndefined();
  });
});
