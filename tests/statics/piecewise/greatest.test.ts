import { describe, expect, test } from 'vitest';
import {
  greatestOf,
  leastOf,
  valueAt,
  type Piecewise,
} from '../../../src/statics/index.ts';

const rising: Piecewise = { pieces: [{ start: 0, end: 10, coefficients: [0, 1] }] };
const falling: Piecewise = {
  pieces: [
    { start: 0, end: 4, coefficients: [8, -1] },
    { start: 4, end: 10, coefficients: [4, -1] },
  ],
};
const arch: Piecewise = { pieces: [{ start: 0, end: 10, coefficients: [0, 4, -0.4] }] };

describe('greatestOf and leastOf', () => {
  test('change over where the curves cross, inside a stretch and at a jump', () => {
    const top = greatestOf([rising, falling]);
    expect(top.pieces.map(({ start }) => start)).toEqual([0, 4]);
    expect(valueAt(top, 3, 'left')).toBe(5);
    expect(valueAt(top, 4, 'right')).toBe(4);
    expect(valueAt(top, 9, 'left')).toBe(9);
  });

  test('hold the greatest and the least everywhere', () => {
    const all = [rising, falling, arch];
    const [top, bottom] = [greatestOf(all), leastOf(all)];
    for (let x = 0.05; x < 10; x += 0.1) {
      const values = all.map((f) => valueAt(f, x, 'left'));
      expect(valueAt(top, x, 'left')).toBeCloseTo(Math.max(...values), 12);
      expect(valueAt(bottom, x, 'left')).toBeCloseTo(Math.min(...values), 12);
    }
  });

  test('of one function are the function, of none have no pieces', () => {
    expect(greatestOf([arch])).toBe(arch);
    expect(greatestOf([]).pieces).toEqual([]);
  });
});
