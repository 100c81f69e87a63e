import { describe, expect, test } from 'vitest';
import { factorLdl, solveLdl } from '../../../src/statics/linear/banded-ldl.ts';
import { exact, rounded } from '../../../src/statics/linear/double-double.ts';

/** A band by rows from the diagonal to the left. */
const band = (...rows: readonly (readonly number[])[]) =>
  rows.map((row) => row.map(exact));

describe('factorLdl and solveLdl', () => {
  test('solve a small system whose answer is known', () => {
    // [4 2 0; 2 5 1; 0 1 3] · [1 −2 3] = [0 −5 7]
    const factors = factorLdl(band([4], [5, 2], [3, 1]));
    const x = solveLdl(factors, [0, -5, 7].map(exact)).map(rounded);
    expect(x).toEqual([1, -2, 3]);
  });

  test('keep 16 digits where a matrix leaves none to plain numbers', () => {
    // The second pivot is 1e-25, which 1 + 1e-25 as a plain number does not hold.
    const matrix = [[exact(1)], [[1, 1e-25] as const, exact(1)]];
    const x = solveLdl(factorLdl(matrix), [exact(1), [1, 1e-25]]);
    expect(x.map(rounded)).toEqual([0, 1]);
  });

  test('take one row, or none', () => {
    expect(solveLdl(factorLdl(band([2])), [exact(3)]).map(rounded)).toEqual([1.5]);
    expect(solveLdl(factorLdl([]), [])).toEqual([]);
  });

  test('refuse what is not positive definite', () => {
    expect(() => factorLdl(band([1], [1, 1]))).toThrow('cannot factor');
    expect(() => factorLdl(band([-1]))).toThrow(RangeError);
  });
});
