import { describe, expect, test } from 'vitest';
import { combine, valueAt, type Piecewise } from '../../../src/statics/index.ts';

const step: Piecewise = {
  pieces: [
    { start: 2, end: 5, coefficients: [1] },
    { start: 5, end: 10, coefficients: [-1, 0.5] },
  ],
};
const bend: Piecewise = {
  pieces: [
    { start: 2, end: 8, coefficients: [0, 0, 1] },
    { start: 8, end: 10, coefficients: [36, 2] },
  ],
};

describe('combine', () => {
  test('adds factored functions over the breakpoints of both', () => {
    const sum = combine([
      { factor: 2, f: step },
      { factor: -1, f: bend },
    ]);
    expect(sum.pieces.map((piece) => [piece.start, piece.end])).toEqual([
      [2, 5],
      [5, 8],
      [8, 10],
    ]);
    for (const x of [2.5, 5, 6, 8, 9.75]) {
      for (const side of ['left', 'right'] as const) {
        const expected = 2 * valueAt(step, x, side) - valueAt(bend, x, side);
        expect(valueAt(sum, x, side)).toBeCloseTo(expected, 12);
      }
    }
  });

  test('leaves exactly nothing of functions that cancel', () => {
    const third: Piecewise = {
      pieces: [{ start: 2, end: 10, coefficients: [0.1, 0.7] }],
    };
    const sum = combine([
      { factor: 3, f: third },
      { factor: -0.3, f: third },
      { factor: -2.7, f: third },
    ]);
    expect(sum.pieces).toEqual([{ start: 2, end: 10, coefficients: [0] }]);
  });

  test('takes breakpoints a rounding apart for one', () => {
    const near: Piecewise = {
      pieces: [
        { start: 2, end: 5 + 1e-13, coefficients: [1] },
        { start: 5 + 1e-13, end: 10, coefficients: [2] },
      ],
    };
    expect(
      combine([
        { factor: 1, f: step },
        { factor: 1, f: near },
      ]).pieces,
    ).toHaveLength(2);
  });

  test('of nothing has no pieces', () => {
    expect(combine([]).pieces).toEqual([]);
  });
});
