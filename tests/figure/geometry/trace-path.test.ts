import { describe, expect, test } from 'vitest';
import { pointOnCurve, tracePath } from '../../../src/figure/geometry/trace-path.ts';
import { arcPath, linePath } from '../../../src/figure/ink/paths.ts';

describe('tracePath', () => {
  test('a level line is covered by one box', () => {
    expect(tracePath(linePath({ x: 0, y: 5 }, { x: 100, y: 5 }), 0.5)).toEqual([
      { left: -0.5, top: 4.5, right: 100.5, bottom: 5.5 },
    ]);
  });

  test('a slanted line is covered by a row of small boxes, so that its corners stay free', () => {
    const boxes = tracePath(linePath({ x: 0, y: 0 }, { x: 30, y: 30 }), 0.5);
    expect(boxes.length).toBeGreaterThan(9);
    for (const box of boxes) {
      expect(box.right - box.left).toBeLessThan(4);
      expect(Math.abs(box.left - box.top)).toBeLessThan(1e-9);
    }
  });

  test('every point of a curve lies in a box', () => {
    const centre = { x: 50, y: 50 };
    const boxes = tracePath(arcPath(centre, 20, { from: 10, to: 300 }), 0.4);
    for (let degrees = 10; degrees <= 300; degrees += 3) {
      const radians = (degrees * Math.PI) / 180;
      const [x, y] = [50 + 20 * Math.cos(radians), 50 - 20 * Math.sin(radians)];
      const isCovered = boxes.some(
        (box) => x >= box.left && x <= box.right && y >= box.top && y <= box.bottom,
      );
      expect(isCovered).toBe(true);
    }
  });

  test('a closed path comes back to its start', () => {
    const boxes = tracePath([['M', 0, 0], ['L', 10, 0], ['L', 10, 10], ['Z']], 0);
    expect(boxes.some((box) => box.left < 5 && box.top < 5 && box.bottom > 0)).toBe(
      true,
    );
  });
});

describe('pointOnCurve', () => {
  test('begins and ends at the end points', () => {
    const curve = [
      { x: 0, y: 0 },
      { x: 1, y: 3 },
      { x: 2, y: 3 },
      { x: 3, y: 0 },
    ] as const;
    expect(pointOnCurve(curve, 0)).toEqual({ x: 0, y: 0 });
    expect(pointOnCurve(curve, 1)).toEqual({ x: 3, y: 0 });
    expect(pointOnCurve(curve, 0.5)).toEqual({ x: 1.5, y: 2.25 });
  });
});
