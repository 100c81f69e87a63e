import { describe, expect, test } from 'vitest';
import { boxAt } from '../../../src/figure/geometry/box.ts';
import { skyline } from '../../../src/figure/geometry/skyline.ts';

const boxes = [
  boxAt(0, -20, { width: 10, height: 20 }),
  boxAt(10, -5, { width: 10, height: 30 }),
];

describe('skyline', () => {
  test('is the farthest reach among what stands in the span', () => {
    const up = { outward: 'up', none: 0 } as const;
    expect(skyline(boxes, { left: 2, right: 4 }, up)).toBe(-20);
    expect(skyline(boxes, { left: 12, right: 14 }, up)).toBe(-5);
    expect(skyline(boxes, { left: 12, right: 14 }, { outward: 'down', none: 0 })).toBe(
      25,
    );
  });

  test('is what was asked for where nothing stands', () => {
    expect(skyline(boxes, { left: 30, right: 40 }, { outward: 'up', none: -3 })).toBe(
      -3,
    );
  });
});
