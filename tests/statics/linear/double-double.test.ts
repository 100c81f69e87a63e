import { describe, expect, test } from 'vitest';
import {
  add,
  divide,
  entryAt,
  exact,
  exactProduct,
  exactSum,
  multiply,
  negative,
  rounded,
  subtract,
  sumOf,
  times,
  zero,
} from '../../../src/statics/linear/double-double.ts';

const third = divide(exact(1), exact(3));

describe('double-double', () => {
  test('keeps what a plain sum and a plain product lose', () => {
    expect(exactSum(1, 2 ** -70)).toEqual([1, 2 ** -70]);
    expect(exactSum(2 ** -70, 1)).toEqual([1, 2 ** -70]);
    const [high, low] = exactProduct(1 + 2 ** -30, 1 + 2 ** -30);
    expect([high, low]).toEqual([1 + 2 ** -29, 2 ** -60]);
  });

  test('gives a third that three times is one to 31 digits', () => {
    const rest = subtract(times(3, third), exact(1));
    expect(Math.abs(rounded(rest))).toBeLessThan(1e-31);
    expect(rounded(third)).toBe(1 / 3);
    expect(third[1]).not.toBe(0);
  });

  test('divides what it multiplied back to what it was', () => {
    const root = add(exact(Math.SQRT2), exact(1e-18));
    const there = divide(multiply(root, third), third);
    expect(Math.abs(rounded(subtract(there, root)))).toBeLessThan(1e-31);
  });

  test('survives cancellation of the first sixteen digits', () => {
    const small = add(exact(1e16), exact(1 / 3));
    expect(rounded(subtract(small, exact(1e16)))).toBeCloseTo(1 / 3, 15);
    expect(rounded(sumOf([exact(1e20), third, exact(-1e20)]))).toBeCloseTo(1 / 3, 11);
  });

  test('has no minus zero when rounded, and nothing where a list ends', () => {
    expect(Object.is(rounded(negative(zero)), 0)).toBe(true);
    expect(entryAt([third], 1)).toBe(zero);
    expect(entryAt(undefined, 0)).toBe(zero);
    expect(sumOf([])).toEqual(zero);
  });
});
