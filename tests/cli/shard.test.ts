import { expect, test } from 'vitest';
import { isInShard } from '../../src/cli/shard.ts';

const names = Array.from({ length: 2000 }, (_, index) => `2031-${index}/A.zip`);

test('every name falls to exactly one share', () => {
  for (const name of names) {
    const shares = Array.from({ length: 16 }, (_, index) =>
      isInShard(name, { number: index + 1, count: 16 }),
    );
    expect(shares.filter((isIn) => isIn)).toHaveLength(1);
  }
});

test('shares are of like size', () => {
  const sizes = Array.from(
    { length: 16 },
    (_, index) =>
      names.filter((name) => isInShard(name, { number: index + 1, count: 16 })).length,
  );
  // 125 each, give or take three standard deviations of a fair draw.
  for (const size of sizes)
    expect(Math.abs(size - 125)).toBeLessThan(3 * Math.sqrt(118));
});

test('without shares every name is taken', () => {
  expect(names.every((name) => isInShard(name, undefined))).toBe(true);
});
