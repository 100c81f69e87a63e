import { describe, expect, test } from 'vitest';
import { arcs, turningArrow } from '../../../src/figure/ink/turning-arrow.ts';
import type { ArrowStyle } from '../../../src/figure/ink/arrow.ts';
import type { ShapeMark } from '../../../src/drawing/index.ts';
import { pointsOf } from '../../support/flat-marks.ts';

const style: ArrowStyle = {
  head: 'filled',
  colour: [0, 0, 0],
  weight: 0.8,
  headLength: 6,
};
const centre = { x: 0, y: 0 };

describe('turningArrow', () => {
  test.each(['clockwise', 'counterclockwise'] as const)('turns %s', (turn) => {
    for (const arc of Object.values(arcs)) {
      const marks = turningArrow(centre, 10, { arc, turn, style })
        .marks as readonly ShapeMark[];
      const [tip, left, right] = pointsOf(marks[1]!.path);
      const back = { x: (left!.x + right!.x) / 2, y: (left!.y + right!.y) / 2 };
      // The moment of the head's direction about the centre; y runs down, so clockwise is positive.
      const way = { x: tip!.x - back.x, y: tip!.y - back.y };
      const about = tip!.x * way.y - tip!.y * way.x;
      expect(Math.sign(about)).toBe(turn === 'clockwise' ? 1 : -1);
    }
  });

  test('leaves the way free for an upward arrow where it is open below', () => {
    const arc = arcs['open-below'];
    const { boxes } = turningArrow(centre, 10, { arc, turn: 'clockwise', style });
    const inTheWay = boxes.filter(
      (box) => box.left < 3 && box.right > -3 && box.top > 0,
    );
    expect(inTheWay).toEqual([]);
  });
});
