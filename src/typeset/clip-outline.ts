import type { PathStep } from '../drawing/index.ts';

/** A rectangle, y down. */
export interface Window {
  readonly left: number;
  readonly top: number;
  readonly right: number;
  readonly bottom: number;
}

/** An outline seen through a window, and whether it still has to be cut off there. */
export interface ClippedOutline {
  readonly steps: readonly PathStep[];
  /** True where a slanted line or a curve crosses the window's edge. */
  readonly mustClip: boolean;
}

/** Curves may bulge this far (ems) past the window without being cut: rounding in the data. */
const slack = 0.0005;

/**
 * Brings an outline into a window. KaTeX's roots and arrows have shafts 400 em long that are to
 * be cut off by the window. Where only level and upright edges cross its border, moving their
 * far ends to the border is the exact cut, and keeps the numbers small; where anything else
 * crosses, `mustClip` says so.
 */
export function clipOutline(
  outline: readonly PathStep[],
  window: Window,
): ClippedOutline {
  let mustClip = false;
  let from: Point = [0, 0];
  let start: Point = [0, 0];
  const steps = outline.map((step): PathStep => {
    if (step[0] === 'Z') {
      mustClip ||= !isCutByMoving([from, start], window);
      from = start;
      return step;
    }
    const points = pointsOf(step);
    const to = points.at(-1) ?? from;
    if (step[0] === 'M') start = to;
    else mustClip ||= !isCutByMoving([from, ...points], window);
    from = to;
    return moved(step, window);
  });
  return { steps, mustClip };
}

type Point = readonly [x: number, y: number];

function pointsOf(step: Exclude<PathStep, readonly ['Z']>): readonly Point[] {
  if (step[0] !== 'C') return [[step[1], step[2]]];
  return [
    [step[1], step[2]],
    [step[3], step[4]],
    [step[5], step[6]],
  ];
}

/** True where moving the points that are outside onto the border cuts the edge exactly. */
function isCutByMoving(edge: readonly Point[], window: Window): boolean {
  const xs = edge.map(([x]) => x);
  const ys = edge.map(([, y]) => y);
  const { left, right, top, bottom } = window;
  return isCutAlong(xs, ys, [left, right]) && isCutAlong(ys, xs, [top, bottom]);
}

function isCutAlong(
  along: readonly number[],
  across: readonly number[],
  [low, high]: readonly [number, number],
): boolean {
  const least = Math.min(...along);
  const most = Math.max(...along);
  const isInside = least >= low - slack && most <= high + slack;
  const isOutside = most <= low || least >= high;
  const isStraightAcross = Math.max(...across) - Math.min(...across) < 1e-9;
  return isInside || isOutside || isStraightAcross;
}

function moved(step: PathStep, { left, right, top, bottom }: Window): PathStep {
  const x = (value: number): number => Math.min(right, Math.max(left, value));
  const y = (value: number): number => Math.min(bottom, Math.max(top, value));
  switch (step[0]) {
    case 'M':
    case 'L':
      return [step[0], x(step[1]), y(step[2])];
    case 'C': {
      const [, x1, y1, x2, y2, x3, y3] = step;
      return ['C', x(x1), y(y1), x(x2), y(y2), x(x3), y(y3)];
    }
    case 'Z':
      return step;
  }
}
