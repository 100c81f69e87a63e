import { describe, expect, test } from 'vitest';
import {
  conditionOf,
  nullSpaceOf,
  rankOf,
  singularValues,
} from '../../../src/statics/linear/singular-values.ts';
import { combineVectors } from '../../../src/statics/linear/vector.ts';

describe('singularValues', () => {
  test('of vectors at right angles are their lengths, the greatest first', () => {
    expect(
      singularValues([
        [3, 0],
        [0, 4],
      ]).values,
    ).toEqual([4, 3]);
  });

  test('of [[1, 0], [1, 1]] are the golden ratio and its inverse', () => {
    const golden = (1 + Math.sqrt(5)) / 2;
    const { values } = singularValues([
      [1, 0],
      [1, 1],
    ]);
    expect(values[0]).toBeCloseTo(golden, 14);
    expect(values[1]).toBeCloseTo(1 / golden, 14);
  });

  test('come with combinations of the vectors that have just those lengths', () => {
    const vectors = [
      [2, -1, 0.5],
      [0.3, 7, 1],
      [4, 4, -3],
      [1, 0, 0],
    ];
    const { values, combinations } = singularValues(vectors);
    for (const [index, combination] of combinations.entries()) {
      expect(Math.hypot(...combination)).toBeCloseTo(1, 13);
      const sum = combineVectors(combination, vectors, 3);
      expect(Math.hypot(...sum)).toBeCloseTo(values[index]!, 12);
    }
  });

  test('find a small value beside a great one to its own last figures', () => {
    const { values } = singularValues([
      [1e8, 0],
      [0, 1e-7],
    ]);
    expect(values[1]).toBe(1e-7);
  });
});

describe('rankOf and nullSpaceOf', () => {
  test('see through a combination that hides in rounding', () => {
    const [a, b] = [
      [0.1, 0.2, 0.3],
      [1 / 3, 1 / 7, 1 / 9],
    ];
    const c = combineVectors([1.7, -0.3], [a, b], 3);
    const found = singularValues([a, b, c]);
    expect(rankOf(found)).toBe(2);
    const [relation] = nullSpaceOf(found);
    expect(nullSpaceOf(found)).toHaveLength(1);
    expect(relation![0]! / relation![2]!).toBeCloseTo(-1.7, 10);
    expect(relation![1]! / relation![2]!).toBeCloseTo(0.3, 10);
  });

  test('judge a value beside the greatest, so that units do not matter', () => {
    expect(
      rankOf(
        singularValues([
          [1e-20, 0],
          [0, 2e-20],
        ]),
      ),
    ).toBe(2);
    expect(
      rankOf(
        singularValues([
          [1e20, 0],
          [0, 1],
        ]),
      ),
    ).toBe(1);
  });

  test('judge beside a given scale where all may be noise', () => {
    const noise = singularValues([
      [1e-16, 0],
      [0, 1e-17],
    ]);
    expect(rankOf(noise, 1)).toBe(0);
    expect(nullSpaceOf(noise, 1)).toHaveLength(2);
  });

  test('find every vector of no entries to vanish', () => {
    expect(nullSpaceOf(singularValues([[], [], []]))).toHaveLength(3);
  });
});

describe('conditionOf', () => {
  test('is greatest over least, the zeros left out', () => {
    expect(
      conditionOf(
        singularValues([
          [8, 0, 0],
          [0, 2, 0],
          [0, 2, 0],
        ]),
      ),
    ).toBeCloseTo(8 / Math.sqrt(8), 12);
  });

  test('is 1 of nothing at all', () => {
    expect(conditionOf(singularValues([[0, 0]]))).toBe(1);
  });
});
