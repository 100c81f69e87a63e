import type { PathStep } from '../../drawing/index.ts';
import type { Box } from './box.ts';
import { growBox } from './box.ts';
import type { Point } from './point.ts';
import { distance } from './point.ts';

/** Slanted and curved lines are covered by boxes of about this length, points. */
const grain = 3;

/**
 * The boxes that a path covers, `reach` wide to both sides of its line: one box for an upright or
 * level line, a row of small ones for a slanted or curved line, so that labels may come close to
 * it without touching it.
 */
export function tracePath(path: readonly PathStep[], reach: number): readonly Box[] {
  return linesOf(path).flatMap(([from, to]) =>
    chop(from, to).map((box) => growBox(box, reach)),
  );
}

type Line = readonly [from: Point, to: Point];

/** A path as straight lines, its curves as short chords. */
function linesOf(path: readonly PathStep[]): readonly Line[] {
  const lines: Line[] = [];
  let start: Point = { x: 0, y: 0 };
  let at: Point = start;
  const lineTo = (to: Point): void => {
    lines.push([at, to]);
    at = to;
  };
  for (const step of path) {
    switch (step[0]) {
      case 'M':
        at = start = { x: step[1], y: step[2] };
        break;
      case 'L':
        lineTo({ x: step[1], y: step[2] });
        break;
      case 'C':
        for (const to of chordsOf(at, step)) lineTo(to);
        break;
      case 'Z':
        lineTo(start);
        break;
    }
  }
  return lines;
}

type CurveStep = Extract<PathStep, { readonly 0: 'C' }>;

function chordsOf(from: Point, step: CurveStep): readonly Point[] {
  const [, ax, ay, bx, by, x, y] = step;
  const [a, b, to] = [
    { x: ax, y: ay },
    { x: bx, y: by },
    { x, y },
  ];
  const length = distance(from, a) + distance(a, b) + distance(b, to);
  const count = Math.max(2, Math.ceil(length / grain));
  return Array.from({ length: count }, (_, index) =>
    pointOnCurve([from, a, b, to], (index + 1) / count),
  );
}

/** The point of a cubic Bézier curve at t, 0 to 1. */
export function pointOnCurve(
  [p, a, b, q]: readonly [Point, Point, Point, Point],
  t: number,
): Point {
  const u = 1 - t;
  const [wp, wa, wb, wq] = [u * u * u, 3 * u * u * t, 3 * u * t * t, t * t * t];
  return {
    x: wp * p.x + wa * a.x + wb * b.x + wq * q.x,
    y: wp * p.y + wa * a.y + wb * b.y + wq * q.y,
  };
}

function chop(from: Point, to: Point): readonly Box[] {
  const isStraight = from.x === to.x || from.y === to.y;
  const count = isStraight ? 1 : Math.max(1, Math.ceil(distance(from, to) / grain));
  const at = (index: number): Point => ({
    x: from.x + ((to.x - from.x) * index) / count,
    y: from.y + ((to.y - from.y) * index) / count,
  });
  return Array.from({ length: count }, (_, index) => boxOf(at(index), at(index + 1)));
}

function boxOf(a: Point, b: Point): Box {
  return {
    left: Math.min(a.x, b.x),
    top: Math.min(a.y, b.y),
    right: Math.max(a.x, b.x),
    bottom: Math.max(a.y, b.y),
  };
}
