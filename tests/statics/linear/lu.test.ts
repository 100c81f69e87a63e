import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { factorLu, solveLu } from '../../../src/statics/linear/lu.ts';

describe('factorLu and solveLu', () => {
  test('solve a system whose first pivot is zero', () => {
    const factors = factorLu([
      [0, 2],
      [3, 1],
    ]);
    expect(solveLu(factors, [4, 5])).toEqual([1, 2]);
  });

  test('factor once and solve for several right-hand sides', () => {
    const factors = factorLu([
      [2, 1, 0],
      [1, 3, 1],
      [0, 1, 4],
    ]);
    expect(solveLu(factors, [3, 5, 5]).map((x) => Math.round(x * 1e12) / 1e12)).toEqual(
      [1, 1, 1],
    );
    expect(solveLu(factors, [2, 1, 0]).map((x) => Math.round(x * 1e12) / 1e12)).toEqual(
      [1, 0, 0],
    );
  });

  test('solve any well-behaved system to a small residual', () => {
    const entry = fc.integer({ min: -9, max: 9 });
    const row = fc.array(entry, { minLength: 5, maxLength: 5 });
    fc.assert(
      fc.property(
        fc.array(row, { minLength: 5, maxLength: 5 }),
        row,
        (random, right) => {
          // A heavy diagonal keeps the matrix from being singular.
          const matrix = random.map((line, i) =>
            line.map((value, j) => (i === j ? value + 60 : value)),
          );
          const x = solveLu(factorLu(matrix), right);
          for (const [i, line] of matrix.entries()) {
            const left = line.reduce((sum, value, j) => sum + value * x[j]!, 0);
            expect(Math.abs(left - right[i]!)).toBeLessThan(1e-12);
          }
        },
      ),
    );
  });

  test('refuse a singular matrix, one singular but for rounding, and one that is not square', () => {
    expect(() =>
      factorLu([
        [1, 2],
        [2, 4],
      ]),
    ).toThrow(RangeError);
    expect(() =>
      factorLu([
        [0.1, 0.3],
        [0.3, 0.9],
      ]),
    ).toThrow(RangeError);
    expect(() =>
      factorLu([
        [1, 2, 3],
        [4, 5, 7],
      ]),
    ).toThrow(RangeError);
  });

  test('solve the system of no unknowns', () => {
    expect(solveLu(factorLu([]), [])).toEqual([]);
  });
});
