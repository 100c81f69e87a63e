import { describe, expect, test } from 'vitest';
import {
  isClose,
  isNear,
  isRounded,
  standsFor,
  unitOfPlace,
} from '../../../src/review/matching/closeness.ts';

describe('tolerances', () => {
  test('a unit of the last of three figures goes with the size', () => {
    expect(unitOfPlace(8.533, 3)).toBeCloseTo(0.01, 12);
    expect(unitOfPlace(100, 3)).toBeCloseTo(1, 12);
    expect(unitOfPlace(0, 3)).toBe(0);
  });

  // Edges of "within one unit of the last of three figures".
  test.each([
    [8.53, 8.533, true],
    [8.54, 8.533, true],
    [8.55, 8.533, false],
    [101, 100, true],
    [99, 100, true],
    [102, 100, false],
    [98.9, 100, false],
    [9.99, 10, true],
    [2.4, 2.4, true],
    [-2.4, 2.4, false],
    [0, 0, true],
  ])('%d beside %d: %s', (found, truth, expected) => {
    expect(isClose(found, truth)).toBe(expected);
  });

  test('cutting off passes as rounding does', () => {
    expect(isClose(16.6, 16.6667)).toBe(true);
    expect(isClose(16.7, 16.6667)).toBe(true);
  });

  test('with fewer figures of the project the unit is coarser', () => {
    expect(isClose(8.6, 8.533, 2)).toBe(true);
    expect(isClose(8.6, 8.533, 3)).toBe(false);
  });

  test('a written number stands for what its rounding leaves open', () => {
    expect(standsFor(14.03, 14, 0)).toBe(true);
    expect(standsFor(9.97, 9.95, 0)).toBe(false);
    expect(standsFor(9.97, 9.95, 0.006)).toBe(true);
  });

  test('arms as people write them are one to half a hundredth', () => {
    expect(isNear(1.67, 5 / 3)).toBe(true);
    expect(isNear(1.7, 5 / 3)).toBe(false);
  });

  test('two figures of the written unit are a rounding, one is another number', () => {
    const foot = 0.3048;
    expect(isRounded(5.3 * foot, 5.333 * foot, foot)).toBe(true);
    expect(isRounded(5 * foot, 5.333 * foot, foot)).toBe(false);
    expect(isRounded(5.4 * foot, 5.333 * foot, foot)).toBe(false);
    expect(isRounded(5.3 * foot, 5.333 * foot, undefined)).toBe(false);
  });
});
