import { describe, expect, test } from 'vitest';
import { openBoard } from '../../src/figure/board.ts';
import { boxAt } from '../../src/figure/geometry/box.ts';

const part = (left: number) => ({
  marks: [],
  boxes: [boxAt(left, 0, { width: 10, height: 10 })],
});

describe('openBoard', () => {
  test('parts keep off parts, but may touch what is touchable', () => {
    const board = openBoard();
    board.draw(part(0));
    board.draw(part(50), 'touchable');
    expect(board.hasRoomFor(part(5))).toBe(false);
    expect(board.hasRoomFor(part(55))).toBe(true);
  });

  test('labels keep off everything', () => {
    const board = openBoard();
    board.draw(part(50), 'touchable');
    expect(board.isFree(boxAt(55, 0, { width: 4, height: 4 }))).toBe(false);
    expect(board.isFree(boxAt(61, 0, { width: 4, height: 4 }))).toBe(false);
    expect(board.isFree(boxAt(62, 0, { width: 4, height: 4 }))).toBe(true);
  });

  test('what was there before is kept clear of and not drawn again', () => {
    const board = openBoard(part(0).boxes);
    expect(board.hasRoomFor(part(5))).toBe(false);
    expect(board.strip()).toEqual({ marks: [], labels: [], obstacles: [] });
  });
});
