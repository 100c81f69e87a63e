import { describe, expect, test } from 'vitest';
import { unionOf } from '../../../src/figure/geometry/box.ts';
import { arrow } from '../../../src/figure/ink/arrow.ts';
import type { ArrowStyle } from '../../../src/figure/ink/arrow.ts';
import type { ShapeMark } from '../../../src/drawing/index.ts';
import { pointsOf } from '../../support/flat-marks.ts';

const filled: ArrowStyle = {
  head: 'filled',
  colour: [0, 0, 0],
  weight: 0.8,
  headLength: 6.6,
};
const open: ArrowStyle = { ...filled, head: 'open' };
const [tail, tip] = [
  { x: 0, y: 0 },
  { x: 0, y: 30 },
];

const shapes = (style: ArrowStyle): readonly ShapeMark[] =>
  arrow(tail, tip, style).marks.filter((mark) => mark.kind === 'shape');

describe('arrow', () => {
  test('a filled head is a slender triangle, about three times as long as wide', () => {
    const [shaft, head] = shapes(filled);
    const [point, left, right] = pointsOf(head!.path);
    expect(head!.fill).toEqual([0, 0, 0]);
    expect(point).toEqual(tip);
    const width = Math.abs(left!.x - right!.x);
    expect((point!.y - left!.y) / width).toBeGreaterThan(2.5);
    expect((point!.y - left!.y) / width).toBeLessThan(3.5);
    // The shaft ends inside the head and does not blunt its tip.
    const end = pointsOf(shaft!.path).at(-1)!;
    expect(end.y).toBeGreaterThan(left!.y);
    expect(end.y).toBeLessThan(tip.y - 1);
  });

  test('an open head is two strokes and no fill, so that it differs without colour', () => {
    const [, head] = shapes(open);
    expect(head!.fill).toBeUndefined();
    expect(head!.stroke).toBeDefined();
  });

  test('no part of an arrow reaches past its tip', () => {
    for (const style of [filled, open]) {
      const outline = unionOf(arrow(tail, tip, style).boxes)!;
      expect(outline.bottom).toBeLessThanOrEqual(tip.y + 0.45);
    }
  });

  test('an arrow shorter than its head has a smaller head', () => {
    const [, head] = arrow(tail, { x: 0, y: 4 }, filled).marks as readonly ShapeMark[];
    const ys = pointsOf(head!.path).map(({ y }) => y);
    expect(Math.min(...ys)).toBeGreaterThanOrEqual(0);
  });
});
