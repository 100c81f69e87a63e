import type { Drawing } from '../../drawing/index.ts';
import { arrowStyles } from '../figure-setting.ts';
import type { PictureLoad } from '../figure-spec.ts';
import type { Point } from '../geometry/point.ts';
import { directionOf } from '../geometry/point.ts';
import type { Part } from '../ink/part.ts';
import { aroundPoint } from '../labels/candidates.ts';
import type { Wish } from '../labels/settle-labels.ts';
import { axialRow } from './axial-row.ts';
import type { Board } from '../board.ts';
import {
  distributedShape,
  endLines,
  intensityLine,
  rowOfArrows,
  withoutEnds,
} from './distributed-shape.ts';
import type { DistributedShape } from './distributed-shape.ts';
import { isAxial } from './force-poses.ts';
import { labelAlong, labelAtEnd } from './labels-along.ts';
import type { StripSetting } from './strip-setting.ts';
import { setSmall } from '../labels/small-label.ts';

type DistributedLoad = Extract<PictureLoad, { readonly kind: 'distributed' }>;

/** What came of putting a load on a strip: its labels, and what other loads may stand on. */
export interface PutLoad {
  readonly wishes: readonly Wish[];
  readonly shelf?: DistributedShape;
}

/** So many of a row's arrows must find room for the load to be legible. */
const leastArrows = 0.6;

/**
 * Draws a distributed load on the strip; undefined where there is no room, and the load goes to
 * a strip of its own.
 */
export function putDistributed(
  board: Board,
  load: DistributedLoad,
  setting: StripSetting,
): PutLoad | undefined {
  if (isAxial(load.degrees)) return putAxialRow(board, load, setting);
  // An uplift may pull from above; a load that presses down must never seem to hang below.
  const { y } = directionOf(load.degrees);
  const isUplift = y * load.sizes[0] <= 0 && y * load.sizes[1] <= 0;
  for (const pulls of isUplift ? [false, true] : [false]) {
    const shape = distributedShape(load, setting, pulls);
    const put = putShape(board, shape, setting);
    if (put) return { wishes: wishesOf(load, shape, setting), shelf: shape };
  }
  return undefined;
}

function putShape(
  board: Board,
  shape: DistributedShape,
  setting: StripSetting,
): boolean {
  const { load, row } = arrowStyles(setting.theme);
  const line = { ...load, weight: row.weight * 1.2 };
  if (!board.hasRoomFor(intensityLine(withoutEnds(shape), line))) return false;
  const hasRoom = (part: Part): boolean => board.hasRoomFor(part, 0.3);
  const arrows = rowOfArrows(shape, row);
  const free = arrows.filter(hasRoom);
  if (free.length < leastArrows * arrows.length) return false;
  const drawn = [
    intensityLine(shape, line),
    ...endLines(shape, row).filter(hasRoom),
    ...free,
  ];
  for (const part of drawn) board.draw(part);
  return true;
}

function wishesOf(
  load: DistributedLoad,
  shape: DistributedShape,
  setting: StripSetting,
): readonly Wish[] {
  const [first, last] = load.labels.map((label) =>
    label === undefined ? undefined : setSmall(label, setting),
  );
  if (load.sizes[0] === load.sizes[1]) {
    const label = first ?? last;
    return label === undefined ? [] : [labelAlong(label, shape)];
  }
  return [
    ...(first === undefined ? [] : [labelAtEnd(first, shape, 'from')]),
    ...(last === undefined ? [] : [labelAtEnd(last, shape, 'to')]),
  ];
}

/** Heights of a row of axial arrows over or under the axis, points. */
const rowHeights = [-7, 7, -12, 12];

function putAxialRow(
  board: Board,
  load: DistributedLoad,
  setting: StripSetting,
): PutLoad | undefined {
  const style = arrowStyles(setting.theme).row;
  for (const y of rowHeights) {
    const row = axialRow(load, { y, style }, setting);
    if (!board.hasRoomFor(row)) continue;
    board.draw(row);
    return { wishes: axialWishes(load, y, setting) };
  }
  return undefined;
}

function axialWishes(
  load: DistributedLoad,
  y: number,
  setting: StripSetting,
): readonly Wish[] {
  const [from, to] = [setting.stations.xOf(load.from), setting.stations.xOf(load.to)];
  const isUniform = load.sizes[0] === load.sizes[1];
  const places = isUniform ? [(from + to) / 2, (from + to) / 2] : [from, to];
  const labels = isUniform
    ? [load.labels[0] ?? load.labels[1], undefined]
    : load.labels;
  return labels.flatMap((label, index) =>
    label === undefined
      ? []
      : [
          wishAcross(setSmall(label, setting), {
            x: places[index] ?? from,
            y: y + Math.sign(y) * 1.5,
          }),
        ],
  );
}

/** A label over (or under) a point, away from the member. */
function wishAcross(label: Drawing, point: Point): Wish {
  const outward = point.y < 0 ? 'up' : 'down';
  return {
    label,
    candidates: aroundPoint(point, label, {
      sides: outward === 'up' ? ['n', 'ne', 'nw'] : ['s', 'se', 'sw'],
      gaps: [2.4, 5, 8].map((gap) => ({ x: 0, y: gap })),
    }),
    anchors: [point],
    outward,
  };
}
