import { describe, expect, test } from 'vitest';
import { assign } from '../../../src/comparison/inputs/assign.ts';

/** The cost of the cheapest of all pairings, found by trying every one. */
function cheapest(
  costs: readonly (readonly number[])[],
  alone: number,
  taken: ReadonlySet<number> = new Set(),
): number {
  const [row, ...rest] = costs;
  const columns = costs[0]?.length ?? 0;
  if (row === undefined) return 0;
  const left = alone + cheapest(rest, alone, taken);
  const pairs = row.flatMap((cost, column) =>
    taken.has(column)
      ? []
      : // A column that is taken is not left alone.
        [cost - alone + cheapest(rest, alone, new Set([...taken, column]))],
  );
  return columns === 0 ? left : Math.min(left, ...pairs);
}

function costOf(
  costs: readonly (readonly number[])[],
  pairing: readonly (number | undefined)[],
  alone: number,
): number {
  return pairing.reduce<number>(
    (sum, column, row) =>
      sum + (column === undefined ? alone : (costs[row]?.[column] ?? 0) - alone),
    0,
  );
}

describe('assign', () => {
  test('takes the pairing that is cheapest as a whole, not the cheapest pair first', () => {
    expect(
      assign(
        [
          [1, 2],
          [2, 9],
        ],
        100,
      ),
    ).toEqual([1, 0]);
  });

  test('leaves alone what costs more to pair', () => {
    expect(assign([[5]], 2)).toEqual([undefined]);
    expect(assign([[3]], 2)).toEqual([0]);
    expect(assign([[Infinity]], 2)).toEqual([undefined]);
    expect(assign([[], []], 2)).toEqual([undefined, undefined]);
    expect(assign([], 2)).toEqual([]);
  });

  test('pairs each row and each column once at most', () => {
    const costs = [
      [1, 1, 1],
      [1, 1, 1],
      [1, 1, 1],
      [1, 1, 1],
    ];
    const found = assign(costs, 1).filter((column) => column !== undefined);
    expect([...found].sort()).toEqual([0, 1, 2]);
  });

  test('costs as much as the best of all pairings, on many tables', () => {
    let seed = 11;
    const next = (): number => {
      seed = (seed * 48271) % 2147483647;
      return seed / 2147483647;
    };
    for (let table = 0; table < 200; table += 1) {
      const [rows, columns] = [1 + Math.floor(next() * 5), 1 + Math.floor(next() * 5)];
      const costs = Array.from({ length: rows }, () =>
        Array.from({ length: columns }, () => (next() < 0.15 ? Infinity : next() * 4)),
      );
      const pairing = assign(costs, 1);
      expect(costOf(costs, pairing, 1)).toBeCloseTo(cheapest(costs, 1), 9);
    }
  });
});
