import { describe, expect, test } from 'vitest';
import { boxAt } from '../../../src/figure/geometry/box.ts';
import {
  aroundPoint,
  besidePoint,
  holdBetween,
} from '../../../src/figure/labels/candidates.ts';

const size = { width: 20, height: 8 };
const point = { x: 100, y: 50 };

describe('besidePoint', () => {
  test.each([
    ['n', 90, 39],
    ['s', 90, 53],
    ['e', 102, 46],
    ['w', 78, 46],
    ['ne', 102, 39],
    ['sw', 78, 53],
  ] as const)('stands at the %s', (side, left, top) => {
    expect(besidePoint(point, side, size, { x: 2, y: 3 })).toEqual(
      boxAt(left, top, size),
    );
  });
});

describe('aroundPoint', () => {
  test('tries every side near by before any farther out', () => {
    const boxes = aroundPoint(point, size, {
      sides: ['n', 's'],
      gaps: [
        { x: 0, y: 2 },
        { x: 0, y: 9 },
      ],
    });
    expect(boxes.map(({ top }) => top)).toEqual([40, 52, 33, 59]);
  });
});

describe('holdBetween', () => {
  test('pushes a box inside by as little as needed', () => {
    const bounds = { left: 0, right: 100 };
    expect(holdBetween(boxAt(-5, 0, size), bounds).left).toBe(0);
    expect(holdBetween(boxAt(95, 0, size), bounds).right).toBe(100);
    expect(holdBetween(boxAt(30, 0, size), bounds).left).toBe(30);
  });
});
