import { describe, expect, test } from 'vitest';
import { factorLdl } from '../../../src/statics/linear/banded-ldl.ts';
import { conditionEstimate } from '../../../src/statics/linear/condition-estimate.ts';
import { exact } from '../../../src/statics/linear/double-double.ts';

function estimate(...rows: readonly (readonly number[])[]): number {
  const matrix = rows.map((row) => row.map(exact));
  return conditionEstimate(matrix, factorLdl(matrix));
}

describe('conditionEstimate', () => {
  test('is 1 for a diagonal matrix, whatever its units, and for none', () => {
    expect(estimate([1], [1e12], [1e-9])).toBeCloseTo(1, 12);
    expect(estimate()).toBe(1);
  });

  test('is (1 + c) / (1 − c) for two unknowns that are coupled by c', () => {
    for (const c of [0.5, 0.9, 0.999]) {
      expect(estimate([1], [1, c])).toBeCloseTo((1 + c) / (1 - c), 6);
      expect(estimate([1e4], [1e-4, c])).toBeCloseTo((1 + c) / (1 - c), 6);
    }
  });

  test('is the product of the sum norms of a chain and its inverse', () => {
    // 2 on the diagonal, −1 beside it, scaled to 1 and −1/2: the inverse has the entries 2 · i (n + 1 − j) / (n + 1).
    const n = 9;
    const rows = Array.from({ length: n }, (_, i) => (i === 0 ? [2] : [2, -1]));
    const columns = Array.from({ length: n }, (_, j) =>
      Array.from({ length: n }, (__, i) => {
        const [low, high] = [Math.min(i, j) + 1, Math.max(i, j) + 1];
        return (2 * low * (n + 1 - high)) / (n + 1);
      }).reduce((sum, value) => sum + value, 0),
    );
    expect(estimate(...rows)).toBeCloseTo(2 * Math.max(...columns), 9);
  });
});
