import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  antiderivative,
  derivative,
  evaluatePolynomial,
  rootsOf,
  shiftOrigin,
  trim,
} from '../../../src/statics/piecewise/polynomial.ts';

/** The polynomial with these roots. */
function withRoots(roots: readonly number[]): readonly number[] {
  return roots.reduce<readonly number[]>(
    (polynomial, root) =>
      [0, ...polynomial].map((value, power) => value - root * (polynomial[power] ?? 0)),
    [1],
  );
}

describe('evaluatePolynomial', () => {
  test('adds up ascending powers', () => {
    expect(evaluatePolynomial([1, 2, 3], 2)).toBe(17);
    expect(evaluatePolynomial([], 5)).toBe(0);
  });

  test('gives exactly 0 where the terms cancel but for rounding', () => {
    expect(0.3 - 0.1 * 3).not.toBe(0);
    expect(evaluatePolynomial([0.3, -0.1], 3)).toBe(0);
  });

  test('never gives a minus zero', () => {
    expect(Object.is(evaluatePolynomial([-0], 1), 0)).toBe(true);
  });
});

describe('derivative, antiderivative, shiftOrigin and trim', () => {
  test('undo one another', () => {
    expect(derivative(antiderivative([4, 3, 2], 7))).toEqual([4, 3, 2]);
  });

  test('see the same curve from another origin', () => {
    const seen = shiftOrigin([1, -2, 0.5, 3], 1.5);
    for (const s of [-1, 0, 2]) {
      expect(evaluatePolynomial(seen, s)).toBeCloseTo(
        evaluatePolynomial([1, -2, 0.5, 3], s + 1.5),
        12,
      );
    }
  });

  test('leave out leading zeros but not the last coefficient', () => {
    expect(trim([1, 0, 0])).toEqual([1]);
    expect(trim([0, 0])).toEqual([0]);
    expect(trim([])).toEqual([0]);
  });
});

describe('rootsOf', () => {
  test('finds a crossing, and one at each end', () => {
    expect(rootsOf([-6, 2], 10, 1e-9)).toEqual([3]);
    expect(rootsOf([0, 10, -1], 10, 1e-9)).toEqual([0, 10]);
  });

  test('finds a zero that only touches, once', () => {
    expect(rootsOf([4, -4, 1], 10, 1e-9)).toEqual([2]);
  });

  test('finds all three of a cubic, a double one among them', () => {
    const roots = rootsOf(withRoots([1, 4, 4]), 10, 1e-9);
    expect(roots).toHaveLength(2);
    expect(roots[0]).toBeCloseTo(1, 10);
    expect(roots[1]).toBeCloseTo(4, 6);
  });

  test('finds none of a constant, of nothing, or outside the stretch', () => {
    expect(rootsOf([3], 10, 1e-9)).toEqual([]);
    expect(rootsOf([0], 10, 1e-9)).toEqual([]);
    expect(rootsOf([], 10, 1e-9)).toEqual([]);
    expect(rootsOf([1, 1], 10, 1e-9)).toEqual([]);
    expect(rootsOf([-20, 1], 10, 1e-9)).toEqual([]);
  });

  test('is not led astray by a faint highest term', () => {
    expect(rootsOf([-6, 2, 1e-18], 10, 1e-9)).toEqual([3]);
  });

  test('finds every root of any cubic or quartic with roots apart', () => {
    const root = fc.integer({ min: 1, max: 99 });
    fc.assert(
      fc.property(fc.uniqueArray(root, { minLength: 1, maxLength: 4 }), (numbers) => {
        const expected = numbers.map((n) => n / 10).sort((a, b) => a - b);
        const found = rootsOf(withRoots(expected), 10, 1e-10);
        expect(found).toHaveLength(expected.length);
        for (const [index, x] of found.entries())
          expect(x).toBeCloseTo(expected[index]!, 8);
      }),
    );
  });
});
