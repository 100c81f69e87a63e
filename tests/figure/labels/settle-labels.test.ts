import { describe, expect, test } from 'vitest';
import { openBoard } from '../../../src/figure/board.ts';
import { boxAt } from '../../../src/figure/geometry/box.ts';
import { settleLabels } from '../../../src/figure/labels/settle-labels.ts';
import type { Wish } from '../../../src/figure/labels/settle-labels.ts';

const label = { width: 30, height: 6, marks: [] };
const room = {
  left: 0,
  right: 200,
  leader: { width: 0.4, colour: [0, 0, 0] as const },
};
const wish = (x: number, parts: Partial<Wish> = {}): Wish => ({
  label,
  candidates: [],
  anchors: [{ x, y: -20 }],
  outward: 'up',
  ...parts,
});

describe('settleLabels', () => {
  test('a label goes near what it names where there is room, else into a rank', () => {
    const board = openBoard();
    const near = boxAt(60, -30, label);
    settleLabels(board, [wish(75, { candidates: [near] }), wish(150)], room);
    expect(board.written()).toContainEqual(near);
    expect(board.written()).toHaveLength(2);
  });

  test('a label near by never stands in the way of a leader', () => {
    const board = openBoard();
    // The first label would stand right over the second one's only anchor.
    const over = boxAt(60, -40, label);
    settleLabels(board, [wish(20, { candidates: [over] }), wish(75)], room);
    expect(board.written()).not.toContainEqual(over);
  });

  test('labels that bar every way of a label without a place go to the rank as well', () => {
    const board = openBoard();
    const barring = boxAt(60, -40, label);
    board.draw({ marks: [], boxes: [boxAt(90, -30, { width: 40, height: 6 })] });
    const homeless = wish(75, { candidates: [boxAt(95, -30, label)] });
    settleLabels(board, [wish(75, { candidates: [barring] }), homeless], room);
    expect(board.written()).not.toContainEqual(barring);
    expect(board.written()).toHaveLength(2);
  });

  test('labels are held within the bounds', () => {
    const board = openBoard();
    settleLabels(board, [wish(5, { candidates: [boxAt(-10, -30, label)] })], room);
    expect(board.written()[0]!.left).toBe(0);
  });
});
