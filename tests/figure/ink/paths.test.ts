import { describe, expect, test } from 'vitest';
import { arcPath, circlePath, closedPath } from '../../../src/figure/ink/paths.ts';
import { pointsOf } from '../../support/flat-marks.ts';

describe('arcPath', () => {
  test('stays on its circle and ends where asked', () => {
    const points = pointsOf(arcPath({ x: 3, y: 4 }, 10, { from: 0, to: -270 }));
    for (const { x, y } of points) expect(Math.hypot(x - 3, y - 4)).toBeCloseTo(10, 9);
    expect(points.at(-1)!.x).toBeCloseTo(3, 9);
    expect(points.at(-1)!.y).toBeCloseTo(-6, 9);
  });
});

describe('circlePath and closedPath', () => {
  test('are closed', () => {
    expect(circlePath({ x: 0, y: 0 }, 2).at(-1)).toEqual(['Z']);
    expect(
      closedPath([
        { x: 0, y: 0 },
        { x: 1, y: 0 },
      ]).at(-1),
    ).toEqual(['Z']);
  });
});
