import { describe, expect, test } from 'vitest';
import { magnitudesOf } from '../../../src/figure/pictures/magnitudes.ts';
import { down, uniform, varying } from '../../support/pictures.ts';

describe('magnitudesOf', () => {
  const { forceLength, heights } = magnitudesOf([
    down(1, 10),
    down(2, 4),
    uniform(0, 1, 2),
    varying(0, 1, [1, 0]),
  ]);

  test('arrows are as long as their forces are great, but never too short to be seen', () => {
    expect(forceLength(5) / forceLength(10)).toBeCloseTo(0.5, 12);
    expect(forceLength(0.1)).toBe(forceLength(0.01));
    expect(forceLength(0.1)).toBeGreaterThan(10);
  });

  test('distributed loads share one scale, and a shape stays true where it is raised', () => {
    expect(heights([1, 1])[0] / heights([2, 2])[0]).toBeCloseTo(0.5, 1);
    const [first, last] = heights([0.01, 0.002]);
    expect(first).toBeGreaterThan(5);
    expect(last / first).toBeCloseTo(0.2, 12);
  });

  test('a load that changes its sign has heights on both sides', () => {
    const [first, last] = heights([2, -1]);
    expect(first).toBeGreaterThan(0);
    expect(last).toBeCloseTo(-first / 2, 12);
  });

  test('nothing is divided by where all loads are zero', () => {
    const none = magnitudesOf([down(1, 0), uniform(0, 1, 0)]);
    expect(none.forceLength(0)).toBeGreaterThan(0);
    expect(none.heights([0, 0])).toEqual([0, 0]);
  });
});
