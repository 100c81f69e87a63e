import { describe, expect, test } from 'vitest';
import { isSame, stationsBetween } from '../../../src/figure/pictures/stations.ts';

describe('stationsBetween', () => {
  test('maps ends to ends and keeps to scale between', () => {
    const { xOf } = stationsBetween({ start: 2, end: 12 }, { left: 20, right: 220 });
    expect(xOf(2)).toBe(20);
    expect(xOf(12)).toBe(220);
    expect(xOf(7)).toBe(120);
  });
});

describe('isSame', () => {
  test('tells stations apart that are seen apart', () => {
    expect(isSame(100, 100.01)).toBe(true);
    expect(isSame(100, 100.2)).toBe(false);
  });
});
