import { describe, expect, test } from 'vitest';
import {
  anchorBands,
  changeFirst,
  changeLast,
  gapBetween,
  heightOfBands,
} from '../../src/layout/band.ts';
import type { Band } from '../../src/layout/band.ts';

const band = (height: number, above: number = 0, below: number = 0): Band => {
  return { height, above, below, breakBefore: 0, pieces: [] };
};

describe('bands', () => {
  test('of two wishes for room between neighbours the greater counts', () => {
    expect(gapBetween(band(1, 0, 5), band(1, 8, 0))).toBe(8);
    expect(gapBetween(band(1, 0, 9), band(1, 8, 0))).toBe(9);
  });

  test('are as high as they are with their gaps, and nothing at the edges', () => {
    expect(heightOfBands([band(10, 99, 5), band(20, 7, 3), band(30, 2, 99)])).toBe(70);
    expect(heightOfBands([])).toBe(0);
  });

  test('change at one end alone', () => {
    const bands = [band(1), band(2), band(3)];
    const taller = (of: Band): Band => ({ ...of, height: of.height + 10 });
    expect(changeFirst(bands, taller).map(({ height }) => height)).toEqual([11, 2, 3]);
    expect(changeLast(bands, taller).map(({ height }) => height)).toEqual([1, 2, 13]);
  });

  test('hold an anchor at their top, also where there are none', () => {
    const [first] = anchorBands([{ ...band(1), anchors: ['inner'] }, band(2)], 'outer');
    expect(first!.anchors).toEqual(['outer', 'inner']);
    expect(anchorBands([], 'alone')).toMatchObject([{ height: 0, anchors: ['alone'] }]);
  });
});
