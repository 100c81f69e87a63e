import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { boxAt, overlaps } from '../../../src/figure/geometry/box.ts';
import { rankLabels } from '../../../src/figure/labels/rank-labels.ts';
import type { RankSetting } from '../../../src/figure/labels/rank-labels.ts';

const setting: RankSetting = {
  outward: 'up',
  left: 0,
  right: 400,
  taken: [],
  leader: { width: 0.4, colour: [0, 0, 0] },
};
const size = { width: 40, height: 8 };

describe('rankLabels', () => {
  test('a label stands on its point, a little above it, without a leader', () => {
    const { boxes, leaders } = rankLabels(
      [{ anchor: { x: 100, y: -30 }, size }],
      setting,
    );
    expect(boxes[0]!.left).toBe(80);
    expect(boxes[0]!.bottom).toBeLessThan(-30);
    expect(boxes[0]!.bottom).toBeGreaterThan(-34);
    expect(leaders.marks).toEqual([]);
  });

  test('stands above what is in its way, with a leader back to its point', () => {
    const taken = [boxAt(90, -80, { width: 20, height: 30 })];
    const { boxes, leaders } = rankLabels([{ anchor: { x: 100, y: -30 }, size }], {
      ...setting,
      taken,
    });
    expect(boxes[0]!.bottom).toBeLessThan(-80);
    expect(leaders.marks).toHaveLength(1);
  });

  test('down is up turned over', () => {
    const labels = [30, 36, 44, 49].map((x) => ({ anchor: { x, y: -20 }, size }));
    const turned = labels.map(({ anchor }) => ({
      anchor: { x: anchor.x, y: 20 },
      size,
    }));
    const up = rankLabels(labels, setting).boxes;
    const down = rankLabels(turned, { ...setting, outward: 'down' }).boxes;
    expect(down.map(({ left }) => left)).toEqual(up.map(({ left }) => left));
    for (const [index, box] of down.entries())
      expect(box.top).toBeCloseTo(-up[index]!.bottom, 9);
  });

  test('no label covers another, a leader or anything taken, wherever the points are', () => {
    const anchor = fc.record({
      x: fc.double({ min: 0, max: 400, noNaN: true }),
      y: fc.double({ min: -60, max: 0, noNaN: true }),
    });
    const width = fc.double({ min: 4, max: 120, noNaN: true });
    const labels = fc.array(
      fc.record({
        anchor,
        size: fc.record({ width, height: fc.double({ min: 5, max: 12, noNaN: true }) }),
      }),
      { maxLength: 40 },
    );
    fc.assert(
      fc.property(labels, (asked) => {
        const taken = asked.map(({ anchor: { x, y } }) => ({
          left: x - 0.4,
          right: x + 0.4,
          top: y,
          bottom: 0,
        }));
        const { boxes, leaders } = rankLabels(asked, { ...setting, taken });
        for (const [index, box] of boxes.entries()) {
          const others = [...boxes.slice(index + 1), ...leaders.boxes, ...taken];
          expect(others.filter((other) => overlaps(box, other))).toEqual([]);
          expect(box.left).toBeGreaterThanOrEqual(-1e-9);
          expect(box.right).toBeLessThanOrEqual(400 + 1e-9);
        }
      }),
    );
  });
});
