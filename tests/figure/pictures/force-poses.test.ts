import { describe, expect, test } from 'vitest';
import {
  axialPoses,
  crossPoses,
  isAxial,
  standOff,
} from '../../../src/figure/pictures/force-poses.ts';
import type { PosedForce } from '../../../src/figure/pictures/force-poses.ts';

const force = (x: number, degrees: number): PosedForce => ({
  x,
  degrees,
  length: 30,
  surface: 1,
  ends: { left: 50, right: 350 },
});

describe('crossPoses', () => {
  test('a downward load pushes from above: its tip is at the member, its tail away from it', () => {
    const [push] = crossPoses(force(100, 270));
    expect(push).toEqual({
      tip: { x: 100, y: -1 },
      tail: { x: 100, y: -31 },
      lies: 'above',
    });
  });

  test('an upward load pushes from below, or pulls from above', () => {
    const [push, pull] = crossPoses(force(100, 90));
    expect(push).toEqual({
      tip: { x: 100, y: 1 },
      tail: { x: 100, y: 31 },
      lies: 'below',
    });
    expect(pull).toEqual({
      tail: { x: 100, y: -1 },
      tip: { x: 100, y: -31 },
      lies: 'above',
    });
  });

  test('an inclined load keeps its angle', () => {
    const [push] = crossPoses(force(100, 300));
    expect(push!.tail.x).toBeCloseTo(100 - 15, 9);
    expect(push!.tail.y).toBeCloseTo(-1 - 15 * Math.sqrt(3), 9);
  });
});

describe('axialPoses', () => {
  test('at an end the arrow lies outside it, towards it or away from it', () => {
    const [towards] = axialPoses(force(50, 0), 'above');
    expect(towards!.tip.x).toBeLessThan(50);
    expect(towards!.tail.x).toBeLessThan(towards!.tip.x);
    const [away] = axialPoses(force(350, 0), 'above');
    expect(away!.tail.x).toBeGreaterThan(350);
    expect(away!.tip.x).toBeGreaterThan(away!.tail.x);
  });

  test('within the member it stands on a post, on the side asked for first', () => {
    const [above] = axialPoses(force(200, 180), 'above');
    const [below] = axialPoses(force(200, 180), 'below');
    expect(above!.post).toBeDefined();
    expect(above!.tip.y).toBeLessThan(0);
    expect(below!.tip.y).toBeGreaterThan(0);
    expect(above!.tip.x).toBeLessThan(above!.tail.x);
  });

  test('a post arrow never runs out over the end of the member', () => {
    for (const pose of axialPoses(force(340, 0), 'above').filter(({ post }) => post))
      expect(Math.max(pose.tail.x, pose.tip.x)).toBeLessThanOrEqual(351);
  });
});

describe('isAxial', () => {
  test('is true within ten degrees of the axis, either way', () => {
    expect([0, 5, 175, 180, 355].every(isAxial)).toBe(true);
    expect([15, 90, 165, 270, 345].some(isAxial)).toBe(false);
  });
});

describe('standOff', () => {
  test('moves an arrow away from the member', () => {
    const [push] = crossPoses(force(100, 270));
    expect(standOff(push!, 10).tip.y).toBe(-11);
    const [up] = crossPoses(force(100, 90));
    expect(standOff(up!, 10).tip.y).toBe(11);
  });
});
