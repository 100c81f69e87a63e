import type { Stroke } from '../../drawing/index.ts';
import type { Box } from '../geometry/box.ts';
import { boxAt } from '../geometry/box.ts';
import type { Point } from '../geometry/point.ts';
import type { Outward } from '../geometry/skyline.ts';
import { skyline } from '../geometry/skyline.ts';
import type { Part } from '../ink/part.ts';
import { nothing, stroked, together } from '../ink/part.ts';
import { openPath } from '../ink/paths.ts';
import { clusterLabels } from './cluster-labels.ts';
import type { Anchored, Cluster, Seat } from './cluster-labels.ts';

/** Where ranked labels may go. */
export interface RankSetting {
  readonly outward: Outward;
  /** Bounds of the drawing, x. */
  readonly left: number;
  readonly right: number;
  /** Everything that is there already; labels stand outside it. */
  readonly taken: readonly Box[];
  readonly leader: Stroke;
}

/** Ranked labels, in the order asked for, and the thin leaders to those that stand away from their points. */
export interface Ranked {
  readonly boxes: readonly Box[];
  readonly leaders: Part;
}

/** Between a label and what it stands on; between rows of labels; the steepest a leader may lean. */
const gap = 2.4;
const rowGap = 2.6;
const lean = 0.4;

/**
 * Sets labels in ranks outside everything that is drawn, as many rows as their number needs. A
 * label with room stands straight over its point. Where labels crowd they are set in columns,
 * and leaders fan out to them: points and leaders are in the same order from left to right, so
 * no leader crosses another, and each column's leaders rise to the left of its labels, so none
 * crosses a label.
 *
 *        │P₁ = 4 kip   │P₄ = 6 kip
 *        ││P₂ = 3 kip  ││P₅ = 2 kip
 *        │││P₃ = 7 kip │││P₆ = 3 kip
 *         \\\         ///
 *          ↓↓↓       ↓↓↓
 */
export function rankLabels(labels: readonly Anchored[], setting: RankSetting): Ranked {
  // Worked as if outward were up, and turned over at the end.
  const flip = setting.outward === 'up' ? 1 : -1;
  const taken = setting.taken.map((box) => flipBox(box, flip));
  const upright = labels.map(({ anchor, size }) => ({
    anchor: { x: anchor.x, y: anchor.y * flip },
    size,
  }));
  const boxes: Box[] = labels.map(({ anchor, size }) => boxAt(anchor.x, 0, size));
  const leaders: Part[] = [];
  for (const cluster of clusterLabels(upright, setting)) {
    const stacked = stack(cluster, upright, taken);
    for (const { index, box, leader } of stacked) {
      boxes[index] = flipBox(box, flip);
      const path = leader.map(({ x, y }) => ({ x, y: y * flip }));
      leaders.push(path.length < 2 ? nothing : stroked(openPath(path), setting.leader));
    }
  }
  return { boxes, leaders: together(...leaders) };
}

function flipBox({ left, top, right, bottom }: Box, flip: number): Box {
  return flip === 1
    ? { left, top, right, bottom }
    : { left, top: -bottom, right, bottom: -top };
}

interface Seated {
  readonly index: number;
  readonly box: Box;
  readonly leader: readonly Point[];
}

/** Gives the labels of one cluster their heights. */
function stack(
  cluster: Cluster,
  labels: readonly Anchored[],
  taken: readonly Box[],
): readonly Seated[] {
  const anchors = cluster.seats.map(({ index }) => anchorOf(labels, index));
  const floor = skyline(taken, cluster, {
    outward: 'up',
    none: Math.min(...anchors.map(({ y }) => y)),
  });
  if (cluster.kind === 'over') {
    return cluster.seats.map((seat) =>
      seatOver(seat, anchorOf(labels, seat.index), taken),
    );
  }
  const farthest = Math.max(
    ...cluster.seats.map(({ index, lane }) =>
      Math.abs(lane - anchorOf(labels, index).x),
    ),
  );
  const fanTop = floor - gap - Math.min(30, Math.max(4, farthest * lean));
  const rowHeight = Math.max(...cluster.seats.map(({ size }) => size.height)) + rowGap;
  return cluster.seats.map((seat) => {
    const anchor = anchorOf(labels, seat.index);
    const bottom = fanTop - gap - seat.row * rowHeight;
    const box = boxAt(seat.left, bottom - seat.size.height, seat.size);
    const leader = [
      { x: anchor.x, y: anchor.y - gap * 0.6 },
      { x: anchor.x, y: floor - gap },
      { x: seat.lane, y: fanTop },
      { x: seat.lane, y: box.top + seat.size.height * 0.3 },
    ];
    return { index: seat.index, box, leader };
  });
}

/** A label straight over its point, standing on whatever is under it; a leader where it is far off. */
function seatOver(seat: Seat, anchor: Point, taken: readonly Box[]): Seated {
  const span = { left: seat.left, right: seat.left + seat.size.width };
  const floor = skyline(taken, span, { outward: 'up', none: anchor.y });
  const box = boxAt(seat.left, floor - gap - seat.size.height, seat.size);
  const isFar = anchor.y - box.bottom > 3 * gap;
  const leader = isFar
    ? [
        { x: anchor.x, y: anchor.y - gap * 0.6 },
        { x: anchor.x, y: box.bottom + gap * 0.6 },
      ]
    : [];
  return { index: seat.index, box, leader };
}

function anchorOf(labels: readonly Anchored[], index: number): Point {
  const label = labels[index];
  if (label === undefined) throw new RangeError(`There is no label ${index}.`);
  return label.anchor;
}
