import type { Drawing } from '../../drawing/index.ts';
import { unionOf } from '../geometry/box.ts';
import type { Box } from '../geometry/box.ts';
import type { ArrowStyle } from '../ink/arrow.ts';
import type { Part } from '../ink/part.ts';
import { filled } from '../ink/part.ts';
import { circlePath } from '../ink/paths.ts';
import type { Turn } from '../ink/turning-arrow.ts';
import { arcs, turningArrow } from '../ink/turning-arrow.ts';
import { aroundPoint } from '../labels/candidates.ts';
import type { Side } from '../labels/candidates.ts';
import type { Wish } from '../labels/settle-labels.ts';
import type { Board } from '../board.ts';
import { isSame } from './stations.ts';
import type { Ends } from './strip-setting.ts';

/** A couple or a moment to be drawn. */
export interface Turning {
  readonly x: number;
  readonly turn: Turn;
  readonly label: Drawing;
  readonly style: ArrowStyle;
  readonly ends: Ends;
  /** True where a downward arrow comes in from above, so that the arc is better open there. */
  readonly openAbove: boolean;
}

type ArcName = keyof typeof arcs;

const radius = 9.5;
const endRadius = 12;

/**
 * Draws a turning arrow about a point of the member: outside an end, or round a point within;
 * undefined where neither has room. `must` draws it in any case.
 */
export function putMoment(
  board: Board,
  turning: Turning,
  must: boolean = false,
): Wish | undefined {
  const choices = arcsFor(turning);
  const drawn = choices.map((name) => ({ name, part: drawArc(turning, name) }));
  const free = drawn.find(({ part }) => board.hasRoomFor(part));
  const chosen = free ?? (must ? drawn[0] : undefined);
  if (chosen === undefined) return undefined;
  board.draw(chosen.part);
  // The arrow of a force may come in as far as the point itself.
  if (!isAtEnd(chosen.name)) board.draw(dotOf(turning), 'touchable');
  return wishFor(turning, chosen.name, unionOf(chosen.part.boxes));
}

function arcsFor({ x, ends, openAbove }: Turning): readonly ArcName[] {
  const round: readonly ArcName[] = openAbove
    ? ['open-above', 'open-below']
    : ['open-below', 'open-above'];
  if (isSame(x, ends.left)) return ['left', ...round];
  if (isSame(x, ends.right)) return ['right', ...round];
  return round;
}

function isAtEnd(name: ArcName): boolean {
  return name === 'left' || name === 'right';
}

function drawArc({ x, turn, style }: Turning, name: ArcName): Part {
  const at = isAtEnd(name) ? endRadius : radius;
  return turningArrow({ x, y: 0 }, at, { arc: arcs[name], turn, style });
}

function dotOf({ x, style }: Turning): Part {
  return filled(circlePath({ x, y: 0 }, 1.3), style.colour);
}

const sidesOf: Readonly<Record<ArcName, readonly Side[]>> = {
  'open-below': ['n', 'ne', 'nw', 'se', 'sw'],
  'open-above': ['s', 'se', 'sw', 'ne', 'nw'],
  left: ['w', 'n', 's', 'nw', 'sw'],
  right: ['e', 'n', 's', 'ne', 'se'],
};

function wishFor({ label, x }: Turning, name: ArcName, box: Box | undefined): Wish {
  const outline = box ?? { left: x, right: x, top: 0, bottom: 0 };
  const middle = {
    x: (outline.left + outline.right) / 2,
    y: (outline.top + outline.bottom) / 2,
  };
  const half = {
    x: (outline.right - outline.left) / 2,
    y: (outline.bottom - outline.top) / 2,
  };
  const level = sidesOf[name].flatMap((side) => {
    const askew = side.length === 2;
    return [2.6, 5].flatMap((gap) =>
      aroundPoint(middle, label, {
        sides: [side],
        gaps: [
          askew
            ? { x: half.x * 0.7 + gap, y: half.y * 0.5 + gap * 0.5 }
            : { x: half.x + gap, y: half.y + gap },
        ],
      }),
    );
  });
  return {
    label,
    candidates: level,
    anchors: [{ x: middle.x, y: outline.top }],
    outward: 'up',
  };
}
