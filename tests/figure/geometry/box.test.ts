import { describe, expect, test } from 'vitest';
import {
  boxAt,
  growBox,
  moveBox,
  overlaps,
  unionOf,
} from '../../../src/figure/geometry/box.ts';

const box = boxAt(0, 0, { width: 10, height: 4 });

describe('overlaps', () => {
  test('boxes that only touch do not overlap', () => {
    expect(overlaps(box, boxAt(10, 0, { width: 5, height: 4 }))).toBe(false);
    expect(overlaps(box, boxAt(9.9, 0, { width: 5, height: 4 }))).toBe(true);
  });

  test('a gap is asked for on every side', () => {
    expect(overlaps(box, boxAt(11, 0, { width: 5, height: 4 }), 2)).toBe(true);
    expect(overlaps(box, boxAt(0, 5, { width: 5, height: 4 }), 2)).toBe(true);
    expect(overlaps(box, boxAt(0, 6, { width: 5, height: 4 }), 2)).toBe(false);
  });
});

describe('unionOf', () => {
  test('is the smallest box round all, and nothing for none', () => {
    expect(unionOf([box, moveBox(box, -3, 7)])).toEqual({
      left: -3,
      top: 0,
      right: 10,
      bottom: 11,
    });
    expect(unionOf([])).toBeUndefined();
  });
});

describe('growBox', () => {
  test('grows by the same on every side', () => {
    expect(growBox(box, 1)).toEqual({ left: -1, top: -1, right: 11, bottom: 5 });
  });
});
