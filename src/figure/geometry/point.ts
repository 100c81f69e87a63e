/** A point or a vector on the drawing, points, x to the right, y DOWN. */
export interface Point {
  readonly x: number;
  readonly y: number;
}

/**
 * The unit vector of a direction given in degrees from +x, counterclockwise as seen on paper: 90
 * points up, so its y is −1. Quarter turns come out exact.
 */
export function directionOf(degrees: number): Point {
  const turn = ((degrees % 360) + 360) % 360;
  const quarters: Readonly<Record<number, Point>> = {
    0: { x: 1, y: 0 },
    90: { x: 0, y: -1 },
    180: { x: -1, y: 0 },
    270: { x: 0, y: 1 },
  };
  const radians = (turn * Math.PI) / 180;
  return quarters[turn] ?? { x: Math.cos(radians), y: -Math.sin(radians) };
}

/** The point at `along` from `from` in a direction and `across` to the direction's right hand as seen on paper. */
export function pointFrom(
  from: Point,
  direction: Point,
  along: number,
  across: number = 0,
): Point {
  return {
    x: from.x + direction.x * along - direction.y * across,
    y: from.y + direction.y * along + direction.x * across,
  };
}

/** How far apart two points are. */
export function distance(a: Point, b: Point): number {
  return Math.hypot(a.x - b.x, a.y - b.y);
}

/** The unit vector from one point to another; to the right where they are the same. */
export function towards(from: Point, to: Point): Point {
  const length = distance(from, to);
  return length === 0
    ? { x: 1, y: 0 }
    : { x: (to.x - from.x) / length, y: (to.y - from.y) / length };
}
