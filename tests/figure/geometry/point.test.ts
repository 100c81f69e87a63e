import { describe, expect, test } from 'vitest';
import { directionOf, pointFrom, towards } from '../../../src/figure/geometry/point.ts';

describe('directionOf', () => {
  test('counts counterclockwise on paper, where y runs down, and quarter turns are exact', () => {
    expect(directionOf(90)).toEqual({ x: 0, y: -1 });
    expect(directionOf(270)).toEqual({ x: 0, y: 1 });
    expect(directionOf(-90)).toEqual({ x: 0, y: 1 });
    expect(directionOf(540)).toEqual({ x: -1, y: 0 });
    expect(directionOf(30).x).toBeCloseTo(Math.sqrt(3) / 2, 12);
    expect(directionOf(30).y).toBeCloseTo(-0.5, 12);
  });
});

describe('pointFrom', () => {
  test('goes along a direction, and across to its right hand', () => {
    const up = directionOf(90);
    expect(pointFrom({ x: 1, y: 1 }, up, 3, 2)).toEqual({ x: 3, y: -2 });
  });
});

describe('towards', () => {
  test('is a unit vector, to the right where there is no way to go', () => {
    expect(towards({ x: 0, y: 0 }, { x: 0, y: 5 })).toEqual({ x: 0, y: 1 });
    expect(towards({ x: 2, y: 2 }, { x: 2, y: 2 })).toEqual({ x: 1, y: 0 });
  });
});
