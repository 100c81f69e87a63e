import { describe, expect, test } from 'vitest';
import { whereAllVanish } from '../../../src/statics/linear/subspace.ts';

describe('whereAllVanish', () => {
  const plane = [
    [1, 0, 0],
    [0, 1, 0],
  ];

  test('keeps the directions on which a functional is zero', () => {
    const [only, ...more] = whereAllVanish(plane, [[1, -1, 5]]);
    expect(more).toEqual([]);
    expect(only![0]).toBeCloseTo(only![1]!, 12);
    expect(only![2]).toBeCloseTo(0, 12);
  });

  test('keeps all where there is no functional, or where it is only noise', () => {
    expect(whereAllVanish(plane, [])).toHaveLength(2);
    expect(whereAllVanish(plane, [[1e-15, -2e-16, 3]])).toHaveLength(2);
  });

  test('keeps none where the functionals tell every direction apart', () => {
    expect(
      whereAllVanish(plane, [
        [1, 0, 0],
        [1, 1, 0],
      ]),
    ).toEqual([]);
  });
});
