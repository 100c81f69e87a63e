import type { Point } from '../geometry/point.ts';
import type { Size } from './candidates.ts';

/** A label that belongs to a point: the tail of an arrow, the top of a peak. */
export interface Anchored {
  readonly anchor: Point;
  readonly size: Size;
}

/** The seat of one label in a cluster. */
export interface Seat {
  /** Which label. */
  readonly index: number;
  readonly size: Size;
  readonly left: number;
  /** Row in the stack, 0 next to the points. */
  readonly row: number;
  /** Where its leader rises, x. */
  readonly lane: number;
}

/**
 * Labels that crowd each other: either side by side, each over its own point, or in columns that
 * leaders fan out to. `left` and `right` bound all of it, points and leaders too.
 */
export interface Cluster {
  readonly kind: 'over' | 'fan';
  readonly left: number;
  readonly right: number;
  readonly seats: readonly Seat[];
}

interface Bounds {
  readonly left: number;
  readonly right: number;
}

type Indexed = Anchored & { readonly index: number };

/** Between labels side by side, between leaders, and from a leader to its label, points. */
const labelGap = 5;
const laneGap = 3;
const fromLane = 2.2;
/** How much of a label must reach past its point for the eye to join them without a leader. */
const hold = 2.5;

/** Groups labels so that no group comes near another; groups and seats from left to right. */
export function clusterLabels(
  labels: readonly Anchored[],
  bounds: Bounds,
): readonly Cluster[] {
  const sorted = labels
    .map((label, index): Indexed => ({ ...label, index }))
    .sort((a, b) => a.anchor.x - b.anchor.x || a.index - b.index);
  let groups: readonly (readonly Indexed[])[] = sorted.map((label) => [label]);
  // Each round that changes anything leaves fewer groups, so it ends.
  for (;;) {
    const clusters = groups.map((group) => seatGroup(group, bounds));
    const joined = joinNeighbours(groups, clusters);
    if (joined.length === groups.length) return clusters;
    groups = joined;
  }
}

function joinNeighbours(
  groups: readonly (readonly Indexed[])[],
  clusters: readonly Cluster[],
): readonly (readonly Indexed[])[] {
  const joined: Indexed[][] = [];
  let right = -Infinity;
  for (const [index, group] of groups.entries()) {
    const cluster = clusters[index];
    const last = joined.at(-1);
    if (cluster === undefined) continue;
    if (last !== undefined && cluster.left < right + labelGap) last.push(...group);
    else joined.push([...group]);
    right = Math.max(right, cluster.right);
  }
  return joined;
}

function seatGroup(group: readonly Indexed[], bounds: Bounds): Cluster {
  return sideBySide(group, bounds) ?? inColumns(group, bounds);
}

/** All labels in one row, each still over its own point; undefined where that cannot be. */
function sideBySide(group: readonly Indexed[], bounds: Bounds): Cluster | undefined {
  const width =
    group.reduce((sum, { size }) => sum + size.width + labelGap, 0) - labelGap;
  // The place that moves labels least from their points, on average.
  let before = 0;
  const wanted = group.map(({ anchor, size }) => {
    const start = anchor.x - before - size.width / 2;
    before += size.width + labelGap;
    return start;
  });
  const mean = wanted.reduce((sum, start) => sum + start, 0) / group.length;
  let left = Math.max(bounds.left, Math.min(mean, bounds.right - width));
  const start = left;
  const seats: Seat[] = [];
  for (const { anchor, size, index } of group) {
    const isHeld = anchor.x >= left + hold && anchor.x <= left + size.width - hold;
    if (!isHeld) return undefined;
    seats.push({ index, size, left, row: 0, lane: anchor.x });
    left += size.width + labelGap;
  }
  return { kind: 'over', left: start, right: start + width, seats };
}

/** Labels in columns, in as few rows as keep the stack about as wide as the points it belongs to. */
function inColumns(group: readonly Indexed[], bounds: Bounds): Cluster {
  const xs = group.map(({ anchor }) => anchor.x);
  const [first, last] = [Math.min(...xs), Math.max(...xs)];
  const widest = Math.max(...group.map(({ size }) => size.width));
  const room = Math.min(bounds.right - bounds.left, last - first + 1.2 * widest + 12);
  let rows = Math.min(2, group.length);
  while (rows < group.length && widthOf(group, rows) > room) rows += 1;
  const width = widthOf(group, rows);
  // One column stands with its leaders over the points, several with their middle.
  const reach = rows >= group.length ? (group.length - 1) * laneGap : width;
  const middle = (first + last) / 2;
  const left = Math.max(
    bounds.left,
    Math.min(middle - reach / 2, bounds.right - width),
  );
  return {
    kind: 'fan',
    left: Math.min(left, first),
    right: Math.max(left + width, last),
    seats: seatColumns(group, rows, left),
  };
}

function columnsOf(
  group: readonly Indexed[],
  rows: number,
): readonly (readonly Indexed[])[] {
  const count = Math.ceil(group.length / rows);
  return Array.from({ length: count }, (_, column) =>
    // Spread evenly, so that the last column is not the only short one.
    group.slice(
      Math.round((column * group.length) / count),
      Math.round(((column + 1) * group.length) / count),
    ),
  );
}

function columnWidth(column: readonly Indexed[]): number {
  return Math.max(
    ...column.map(({ size }, lane) => lane * laneGap + fromLane + size.width),
  );
}

function widthOf(group: readonly Indexed[], rows: number): number {
  const widths = columnsOf(group, rows).map(columnWidth);
  return widths.reduce((sum, width) => sum + width + labelGap, -labelGap);
}

function seatColumns(
  group: readonly Indexed[],
  rows: number,
  from: number,
): readonly Seat[] {
  let left = from;
  return columnsOf(group, rows).flatMap((column) => {
    const seats = column.map(({ index, size }, place): Seat => {
      const lane = left + place * laneGap;
      return {
        index,
        size,
        lane,
        left: lane + fromLane,
        row: column.length - 1 - place,
      };
    });
    left += columnWidth(column) + labelGap;
    return seats;
  });
}
