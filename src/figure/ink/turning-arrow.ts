import type { Point } from '../geometry/point.ts';
import { directionOf, pointFrom, towards } from '../geometry/point.ts';
import type { ArrowStyle } from './arrow.ts';
import { arrowhead } from './arrow.ts';
import type { Part } from './part.ts';
import { stroked, together } from './part.ts';
import { arcPath } from './paths.ts';

/** The way a moment turns, as seen on paper. */
export type Turn = 'clockwise' | 'counterclockwise';

/** Where the arc of a turning arrow runs: degrees from +x, counterclockwise from `from` to `to`. */
export interface Arc {
  readonly from: number;
  readonly to: number;
}

/** Nearly a full circle, open below so that an upward arrow passes; open above; and half circles outside an end. */
export const arcs: Readonly<
  Record<'open-below' | 'open-above' | 'left' | 'right', Arc>
> = {
  'open-below': { from: -35, to: 215 },
  'open-above': { from: 145, to: 395 },
  left: { from: 115, to: 245 },
  right: { from: -65, to: 65 },
};

/** A circular arrow about a centre: it runs along the arc in its turn, the head at the arc's end. */
export function turningArrow(
  centre: Point,
  radius: number,
  {
    arc,
    turn,
    style,
  }: { readonly arc: Arc; readonly turn: Turn; readonly style: ArrowStyle },
): Part {
  const sense = turn === 'counterclockwise' ? 1 : -1;
  const [start, end] = sense === 1 ? [arc.from, arc.to] : [arc.to, arc.from];
  const headAngle = ((style.headLength / radius) * 180) / Math.PI;
  const shaftEnd = end - sense * headAngle * (style.head === 'filled' ? 0.7 : 0);
  const tip = pointFrom(centre, directionOf(end), radius);
  // The head lies along the chord under it, so that it seems to follow the arc.
  const heel = pointFrom(centre, directionOf(end - sense * headAngle), radius);
  return together(
    stroked(arcPath(centre, radius, { from: start, to: shaftEnd }), {
      width: style.weight,
      colour: style.colour,
    }),
    arrowhead(tip, towards(heel, tip), style),
  );
}
