import type { PathStep } from '../../drawing/index.ts';
import type { Point } from '../geometry/point.ts';
import { directionOf, pointFrom } from '../geometry/point.ts';

/** A straight line. */
export function linePath(from: Point, to: Point): readonly PathStep[] {
  return [
    ['M', from.x, from.y],
    ['L', to.x, to.y],
  ];
}

/** Straight lines from point to point. */
export function openPath(points: readonly Point[]): readonly PathStep[] {
  return points.map(({ x, y }, index): PathStep => [index === 0 ? 'M' : 'L', x, y]);
}

/** Straight lines from point to point and back to the first. */
export function closedPath(points: readonly Point[]): readonly PathStep[] {
  return [...openPath(points), ['Z']];
}

/**
 * A circular arc about a centre from one direction to another, both in degrees from +x,
 * counterclockwise on paper; `to` greater than `from` turns counterclockwise. Each eighth of a
 * turn is one Bézier curve (off the circle by less than 1 part in 200 000).
 */
export function arcPath(
  centre: Point,
  radius: number,
  { from, to }: { readonly from: number; readonly to: number },
): readonly PathStep[] {
  const count = Math.max(1, Math.ceil(Math.abs(to - from) / 45 - 1e-9));
  const step = (to - from) / count;
  // The usual handle length of an arc: 4/3 tan(angle/4) of the radius.
  const handle = (4 / 3) * Math.tan((step * Math.PI) / 720) * radius;
  const at = (degrees: number): Point =>
    pointFrom(centre, directionOf(degrees), radius);
  const start = at(from);
  const curves = Array.from({ length: count }, (_, index): PathStep => {
    const [a, b] = [from + index * step, from + (index + 1) * step];
    const p = pointFrom(at(a), directionOf(a + 90), handle);
    const q = pointFrom(at(b), directionOf(b + 90), -handle);
    const end = at(b);
    return ['C', p.x, p.y, q.x, q.y, end.x, end.y];
  });
  return [['M', start.x, start.y], ...curves];
}

/** A full circle. */
export function circlePath(centre: Point, radius: number): readonly PathStep[] {
  return [...arcPath(centre, radius, { from: 0, to: 360 }), ['Z']];
}
