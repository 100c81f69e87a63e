import { describe, expect, test } from 'vitest';
import { boxAt, overlaps } from '../../../src/figure/geometry/box.ts';
import { hatch } from '../../../src/figure/diagrams/hatch.ts';
import { stationsBetween } from '../../../src/figure/pictures/stations.ts';
import type { Piecewise } from '../../../src/statics/index.ts';

const stations = stationsBetween({ start: 0, end: 10 }, { left: 20, right: 220 });
const scale = { xOf: stations.xOf, yOf: (value: number) => -value };
const stroke = { width: 0.35, colour: [0.6, 0.6, 0.6] as const };
const parabola: Piecewise = {
  pieces: [{ start: 0, end: 10, coefficients: [0, 16, -1.6] }],
};
const curves = [{ of: parabola, style: 'solid' as const }];

describe('hatch', () => {
  test('every line runs from the base line to the curve and no farther', () => {
    const { boxes } = hatch(curves, scale, { stations, gaps: [], stroke });
    expect(boxes.length).toBeGreaterThan(40);
    for (const box of boxes) {
      const x = (((box.left + box.right) / 2 - 20) * 10) / 200;
      expect(box.bottom - 0.175).toBeCloseTo(0, 6);
      expect(box.top + 0.175).toBeCloseTo(-(16 * x - 1.6 * x * x), 6);
    }
  });

  test('makes way for labels', () => {
    const label = boxAt(100, -30, { width: 40, height: 8 });
    const { boxes } = hatch(curves, scale, { stations, gaps: [label], stroke });
    expect(boxes.some((box) => overlaps(box, label))).toBe(false);
  });

  test('an envelope is hatched between its curves only', () => {
    const lower: Piecewise = { pieces: [{ start: 0, end: 10, coefficients: [5] }] };
    const upper: Piecewise = { pieces: [{ start: 0, end: 10, coefficients: [20] }] };
    const both = [upper, lower].map((of) => ({ of, style: 'solid' as const }));
    for (const box of hatch(both, scale, { stations, gaps: [], stroke }).boxes) {
      expect(box.top).toBeCloseTo(-20.175, 6);
      expect(box.bottom).toBeCloseTo(-4.825, 6);
    }
  });
});
