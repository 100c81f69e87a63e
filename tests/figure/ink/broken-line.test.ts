import { describe, expect, test } from 'vitest';
import { boxAt } from '../../../src/figure/geometry/box.ts';
import { breakUpright } from '../../../src/figure/ink/broken-line.ts';

const whole = { top: 0, bottom: 100 };

describe('breakUpright', () => {
  test('makes way for a box on the line and keeps clear of it', () => {
    const [above, below] = breakUpright(5, whole, [
      boxAt(0, 40, { width: 10, height: 8 }),
    ]);
    expect(above!.top).toBe(0);
    expect(above!.bottom).toBeLessThan(40);
    expect(below!.top).toBeGreaterThan(48);
    expect(below!.bottom).toBe(100);
  });

  test('pays no heed to a box beside it', () => {
    expect(breakUpright(5, whole, [boxAt(8, 40, { width: 10, height: 8 })])).toEqual([
      whole,
    ]);
  });

  test('takes boxes in any order, and overlapping ones as one', () => {
    const gaps = [60, 20, 24].map((top) => boxAt(0, top, { width: 10, height: 8 }));
    const left = breakUpright(5, whole, gaps);
    expect(left).toHaveLength(3);
    for (const { top, bottom } of left) {
      expect(gaps.some((gap) => top < gap.bottom && bottom > gap.top)).toBe(false);
    }
  });

  test('nothing is left of a line that is covered whole', () => {
    expect(breakUpright(5, whole, [boxAt(0, -1, { width: 10, height: 120 })])).toEqual(
      [],
    );
  });
});
