import type { Drawing, Stroke } from '../../drawing/index.ts';
import type { Box } from '../geometry/box.ts';
import { overlaps } from '../geometry/box.ts';
import type { Point } from '../geometry/point.ts';
import type { Outward } from '../geometry/skyline.ts';
import type { Board } from '../board.ts';
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
  const near = clearLeaders(wishes, placeNear(board, wishes, room));
  for (const [index, wish] of wishes.entries()) {
    const box = near[index];
    if (box !== undefined) board.write(wish.label, box);
  }
  const ranked = wishes.filter((_, index) => near[index] === undefined);
  for (const outward of ['up', 'down'] as const) {
    const rank = ranked.filter((wish) => wish.outward === outward);
    writeRank(board, rank, { ...room, outward });
  }
}

/** Places near what they name, clear of the ways of leaders that are sure to come. */
function placeNear(
  board: Board,
  wishes: readonly Wish[],
  room: LabelRoom,
): readonly (Box | undefined)[] {
  const ways = wishes.flatMap((wish) =>
    wish.candidates.length === 0 ? wish.anchors.slice(0, 1).map(wayOut(wish)) : [],
  );
  const isFree = (box: Box): boolean =>
    board.isFree(box) && !ways.some((way) => overlaps(box, way));
  const requests = wishes.map(({ candidates }) => ({
    candidates: candidates.map((box) => holdBetween(box, room)),
  }));
  return placeLabels(requests, isFree);
}

/**
 * Takes back places that bar the way of a leader: a label without a place near by goes to a
 * rank, and every label over all of its anchors goes to a rank with it. Each round takes at
 * least one place back, so it ends.
 */
function clearLeaders(
  wishes: readonly Wish[],
  places: readonly (Box | undefined)[],
): readonly (Box | undefined)[] {
  const near = [...places];
  const barring = (way: Box): readonly number[] =>
    near.flatMap((box, index) =>
      box !== undefined && overlaps(box, way) ? [index] : [],
    );
  for (let isCalm = false; !isCalm;) {
    isCalm = true;
    for (const [index, wish] of wishes.entries()) {
      if (near[index] !== undefined) continue;
      const bars = wish.anchors.map(wayOut(wish)).map(barring);
      if (bars.length === 0 || bars.some((each) => each.length === 0)) continue;
      for (const other of bars[0] ?? []) near[other] = undefined;
      isCalm = false;
    }
  }
  return near;
}

/** How far outward the way of a leader is kept clear, and how wide, points. */
const sight = 2000;
const wayHalf = 1;

/** The way that a leader takes straight outward from an anchor. */
function wayOut({ outward }: Pick<Wish, 'outward'>): (anchor: Point) => Box {
  return ({ x, y }) => ({
    left: x - wayHalf,
    right: x + wayHalf,
    top: outward === 'up' ? y - sight : y + 1,
    bottom: outward === 'up' ? y - 1 : y + sight,
  });
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
  const { boxes, leaders } = rankLabels(labels, {
    ...room,
    // A leader in the outermost lane has a width of its own.
    left: room.left + room.leader.width,
    taken: board.taken(),
  });
  board.draw(leaders);
  for (const [index, wish] of wishes.entries()) {
    const box = boxes[index];
    if (box !== undefined) board.write(wish.label, box);
  }
}

/** The first anchor that nothing stands over; else the first with no label over it; else the first. */
function clearAnchor(board: Board, wish: Wish): Point {
  const way = wayOut(wish);
  const isBare = (anchor: Point): boolean =>
    !board.written().some((box) => overlaps(box, way(anchor)));
  const anchor =
    wish.anchors.find((each) => board.isFree(way(each))) ??
    wish.anchors.find(isBare) ??
    wish.anchors[0];
  if (anchor === undefined) throw new RangeError('A label without an anchor.');
  return anchor;
}
