import { arrowStyles, thinLine } from '../figure-setting.ts';
import type { BeamPicture, PictureLoad } from '../figure-spec.ts';
import { directionOf } from '../geometry/point.ts';
import { stroked } from '../ink/part.ts';
import { linePath } from '../ink/paths.ts';
import type { Wish } from '../labels/settle-labels.ts';
import { settleLabels } from '../labels/settle-labels.ts';
import { hinge } from '../symbols/hinge.ts';
import { openBoard } from '../board.ts';
import type { Board } from '../board.ts';
import type { Strip } from '../strip.ts';
import type { DistributedShape } from './distributed-shape.ts';
import { namePoints } from './name-points.ts';
import { putDistributed } from './put-distributed.ts';
import type { PutLoad } from './put-distributed.ts';
import { putMoment } from './put-moment.ts';
import { putPointLoad } from './put-point-load.ts';
import { putReactions } from './put-reactions.ts';
import { putSupports } from './put-supports.ts';
import { setSmall } from '../labels/small-label.ts';
import type { StripSetting } from './strip-setting.ts';

/** What stands on one strip: the member itself, or the base line of a row of loads above it. */
export interface StripContent {
  readonly axis: 'member' | 'base-line';
  readonly picture: BeamPicture;
  readonly loads: readonly PictureLoad[];
}

/** A strip, and the loads that found no room on it, for a strip of their own. */
export interface LaidStrip {
  readonly strip: Strip;
  readonly overflow: readonly PictureLoad[];
}

/** Draws a member, or the base line of a row, with its loads and all their labels; y = 0 is its axis. */
export function layStrip(content: StripContent, setting: StripSetting): LaidStrip {
  const board = openBoard();
  const wishes: Wish[] = [];
  drawAxis(board, content.axis, setting);
  if (content.axis === 'member') {
    const { picture } = content;
    putSupports(board, picture.supports, setting);
    for (const { x } of picture.hinges) {
      const point = { x: setting.stations.xOf(x), y: 0 };
      board.draw(hinge(point, setting.theme.colour.ink), 'touchable');
    }
    wishes.push(...putReactions(board, picture.reactions, setting));
    wishes.push(...namePoints(picture.points, setting));
  }
  const { put, overflow } = putLoads(board, content.loads, setting);
  wishes.push(...put);
  settleLabels(board, wishes, {
    ...setting.bounds,
    leader: thinLine(setting.theme),
  });
  return { strip: board.strip(), overflow };
}

function drawAxis(
  board: Board,
  axis: StripContent['axis'],
  { theme, ends }: StripSetting,
): void {
  const line = linePath({ x: ends.left, y: 0 }, { x: ends.right, y: 0 });
  const width = axis === 'member' ? theme.line.member : theme.line.dimension;
  board.draw(stroked(line, { width, colour: theme.colour.ink }), 'touchable');
}

/** Couples and distributed loads first: point loads can stand on these. */
function putLoads(
  board: Board,
  loads: readonly PictureLoad[],
  setting: StripSetting,
): { readonly put: readonly Wish[]; readonly overflow: readonly PictureLoad[] } {
  const shelves: DistributedShape[] = [];
  const put: Wish[] = [];
  const overflow: PictureLoad[] = [];
  for (const kind of ['couple', 'distributed', 'force'] as const) {
    for (const load of loads.filter((each) => each.kind === kind)) {
      const done = putLoad(board, load, { ...setting, shelves, loads });
      if (done === undefined) overflow.push(load);
      else put.push(...done.wishes);
      if (done?.shelf !== undefined) shelves.push(done.shelf);
    }
  }
  return { put, overflow };
}

function putLoad(
  board: Board,
  load: PictureLoad,
  setting: StripSetting & {
    readonly shelves: readonly DistributedShape[];
    readonly loads: readonly PictureLoad[];
  },
): PutLoad | undefined {
  switch (load.kind) {
    case 'force':
      return putPointLoad(board, load, setting);
    case 'distributed':
      return putDistributed(board, load, setting);
    case 'couple': {
      const x = setting.stations.xOf(load.x);
      const wish = putMoment(board, {
        x,
        turn: load.turn,
        label: setSmall(load.label, setting),
        style: arrowStyles(setting.theme).load,
        ends: setting.ends,
        openAbove: setting.loads.some((other) => comesFromAbove(other, x, setting)),
      });
      return wish === undefined ? undefined : { wishes: [wish] };
    }
  }
}

function comesFromAbove(
  load: PictureLoad,
  x: number,
  { stations }: StripSetting,
): boolean {
  return (
    load.kind === 'force' &&
    Math.abs(stations.xOf(load.x) - x) < 3 &&
    directionOf(load.degrees).y > 0
  );
}
