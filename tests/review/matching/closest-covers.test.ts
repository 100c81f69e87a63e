import { describe, expect, test } from 'vitest';
import {
  closestCovers,
  type Puzzle,
  type Way,
} from '../../../src/review/matching/closest-covers.ts';
import { freshEffort } from '../../../src/review/matching/effort.ts';

const way = (atoms: number, terms: number, cost: number, ...slips: string[]) =>
  ({ atoms, terms, slips, cost }) satisfies Way<string>;

const puzzle = (
  ways: readonly (readonly Way<string>[])[],
  needs: readonly number[],
): Puzzle<string> => ({
  ways,
  needs: needs.map((atoms) => ({ atoms, slip: `missing ${atoms}` })),
  missing: 1.5,
  used: 0,
  signature: (slip) => slip,
});

describe('closestCovers', () => {
  test('finds a line right where every number has its thing', () => {
    const right = puzzle([[way(1, 1, 0)], [way(2, 2, 0)]], [1, 2]);
    expect(closestCovers(right, freshEffort())).toEqual([{ slips: [], cost: 0 }]);
  });

  test('gives a thing to one number only, and takes the cheapest way out', () => {
    const twice = puzzle(
      [
        [way(1, 1, 0), way(2, 1, 1, 'sign a'), way(0, 1, 2.5, 'extra a')],
        [way(1, 2, 0), way(0, 2, 2.5, 'extra b')],
      ],
      [1, 2],
    );
    expect(closestCovers(twice, freshEffort())).toEqual([
      { slips: ['sign a'], cost: 1 },
    ]);
  });

  test('says what is left out', () => {
    const short = puzzle([[way(1, 1, 0)]], [1, 2, 4]);
    expect(closestCovers(short, freshEffort())).toEqual([
      { slips: ['missing 2', 'missing 4'], cost: 3 },
    ]);
  });

  test('names every explanation that costs the same, three at most', () => {
    const tied = (count: number) =>
      puzzle(
        [Array.from({ length: count }, (_, at) => way(1 << at, 1, 1, `sign of ${at}`))],
        [],
      );
    expect(closestCovers(tied(2), freshEffort()).map(({ slips }) => slips)).toEqual([
      ['sign of 0'],
      ['sign of 1'],
    ]);
    expect(closestCovers(tied(5), freshEffort())).toHaveLength(3);
  });

  test('takes numbers together where they stand for one thing', () => {
    const split = puzzle(
      [[way(1, 0b11, 0.3), way(0, 1, 2.5, 'extra a')], [way(0, 2, 2.5, 'extra b')]],
      [1],
    );
    expect(closestCovers(split, freshEffort())).toEqual([{ slips: [], cost: 0.3 }]);
  });

  test('finds nothing dearer than the bound', () => {
    const short = puzzle([[way(1, 1, 1, 'sign')]], [1]);
    expect(closestCovers(short, freshEffort(), 0.9)).toEqual([]);
    expect(closestCovers(short, freshEffort(), 1)).toHaveLength(1);
  });

  test('stops where its effort is spent, however many ways there are', () => {
    const ways = Array.from({ length: 28 }, (_, at) =>
      Array.from({ length: 28 }, (_other, one) =>
        way(1 << one, 1 << at, 1 + ((at * 7 + one * 11) % 13) / 100, `${at} ${one}`),
      ),
    );
    const effort = freshEffort(20_000);
    closestCovers(puzzle(ways, []), effort);
    expect(effort.spent).toBeGreaterThanOrEqual(20_000);
    expect(effort.spent).toBeLessThan(20_000 + 100);
  });
});
