import type { Drawing, Stroke } from '../../drawing/index.ts';
import type { Box } from '../geometry/box.ts';
import type { Point } from '../geometry/point.ts';
import type { Outward } from '../geometry/skyline.ts';
import type { Board } from '../pictures/board.ts';
import { holdBetween } from './candidates.ts';
import { placeLabels } from './place-labels.ts';
import { rankLabels } from './rank-labels.ts';

/** A label that waits for its place. */
export interface Wish {
  readonly label: Drawing;
  /** Places near what it names, the most wanted first; none where it belongs in a rank anyway. */
  readonly candidates: readonly Box[];
  /** Where its leader may start if it must stand in a rank, the most wanted first, and on which side. */
  readonly anchors: readonly Point[];
  readonly outward: Outward;
}

/** What placing labels depends on. */
export interface LabelRoom {
  /** Bounds of the labels, x; up and down a figure grows as its labels need. */
  readonly left: number;
  readonly right: number;
  readonly leader: Stroke;
}

/**
 * Writes every label on the board: near what it names where there is room, else in a rank
 * outside all that is drawn. Every wish is granted, however many there are.
 */
export function settleLabels(
  board: Board,
  wishes: readonly Wish[],
  room: LabelRoom,
): void {
  const near = placeLabels(
    wishes.map(({ candidates }) => ({
      candidates: candidates.map((box) => holdBetween(box, room)),
    })),
    board.isFree,
  );
  const left: Wish[] = [];
  for (const [index, wish] of wishes.entries()) {
    const box = near[index];
    if (box === undefined) left.push(wish);
    else board.write(wish.label, box);
  }
  for (const outward of ['up', 'down'] as const) {
    const ranked = left.filter((wish) => wish.outward === outward);
    writeRank(board, ranked, { ...room, outward });
  }
}

function writeRank(
  board: Board,
  wishes: readonly Wish[],
  room: LabelRoom & { readonly outward: Outward },
): void {
  if (wishes.length === 0) return;
  const labels = wishes.map((wish) => ({
    anchor: clearAnchor(board, wish),
    size: { width: wish.label.width, height: wish.label.height },
  }));
  const { boxes, leaders } = rankLabels(labels, { ...room, taken: board.taken() });
  board.draw(leaders);
  for (const [index, wish] of wishes.entries()) {
    const box = boxes[index];
    if (box !== undefined) board.write(wish.label, box);
  }
}

/** How far outward a leader's start is looked at, points. */
const sight = 200;

/** The first anchor that nothing stands over; the first of all where every one is covered. */
function clearAnchor(board: Board, { anchors, outward }: Wish): Point {
  const isOpen = ({ x, y }: Point): boolean =>
    board.isFree({
      left: x,
      right: x,
      top: outward === 'up' ? y - sight : y + 2,
      bottom: outward === 'up' ? y - 2 : y + sight,
    });
  const anchor = anchors.find(isOpen) ?? anchors[0];
  if (anchor === undefined) throw new RangeError('A label without an anchor.');
  return anchor;
}
