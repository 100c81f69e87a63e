import { describe, expect, test } from 'vitest';
import { zerosOf, type Piecewise } from '../../../src/statics/index.ts';

function pieces(
  ...list: readonly (readonly [number, number, readonly number[]])[]
): Piecewise {
  return {
    pieces: list.map(([start, end, coefficients]) => ({ start, end, coefficients })),
  };
}

describe('zerosOf', () => {
  test('finds a crossing inside a piece', () => {
    expect(zerosOf(pieces([2, 8, [4, -1]]))).toEqual([{ kind: 'at', x: 6 }]);
  });

  test('finds a change of sign at a jump, where neither side is zero', () => {
    expect(zerosOf(pieces([0, 4, [7.2]], [4, 10, [-4.8]]))).toEqual([
      { kind: 'jump', x: 4 },
    ]);
  });

  test('finds no zero at a jump that keeps its sign', () => {
    expect(zerosOf(pieces([0, 4, [7]], [4, 10, [2]]))).toEqual([]);
  });

  test('reports a zero at a breakpoint once', () => {
    expect(zerosOf(pieces([0, 4, [4, -1]], [4, 10, [0, -2]]))).toEqual([
      { kind: 'at', x: 4 },
    ]);
  });

  test('reports a stretch of zero as one, its ends and neighbours swallowed', () => {
    const f = pieces([0, 4, [4, -1]], [4, 6, [0]], [6, 7, [0]], [7, 9, [0, 3]]);
    expect(zerosOf(f)).toEqual([{ kind: 'along', from: 4, to: 7 }]);
  });

  test('finds a zero that only touches', () => {
    expect(zerosOf(pieces([1, 9, [9, -6, 1]]))).toEqual([{ kind: 'at', x: 4 }]);
  });

  test('calls the zero function zero from end to end', () => {
    expect(zerosOf(pieces([0, 3, [0]], [3, 5, [0]]))).toEqual([
      { kind: 'along', from: 0, to: 5 },
    ]);
  });

  test('takes noise beside a given size for zero', () => {
    const f = pieces([0, 5, [1e-8]]);
    expect(zerosOf(f)).toEqual([]);
    expect(zerosOf(f, 1000)).toEqual([{ kind: 'along', from: 0, to: 5 }]);
  });
});
