import { describe, expect, test } from 'vitest';
import { combineVectors, dot } from '../../../src/statics/linear/vector.ts';

describe('dot and combineVectors', () => {
  test('add up products, and factored vectors', () => {
    expect(dot([1, 2, 3], [4, -5, 6])).toBe(12);
    expect(
      combineVectors(
        [2, -1],
        [
          [1, 0],
          [0, 3],
        ],
        2,
      ),
    ).toEqual([2, -3]);
  });

  test('give a zero vector of the length asked for where there is nothing to add', () => {
    expect(combineVectors([], [], 3)).toEqual([0, 0, 0]);
    expect(dot([], [])).toBe(0);
  });
});
