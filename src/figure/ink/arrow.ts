import type { Colour, Stroke } from '../../drawing/index.ts';
import type { Point } from '../geometry/point.ts';
import { distance, pointFrom, towards } from '../geometry/point.ts';
import type { Part } from './part.ts';
import { filled, stroked, together } from './part.ts';
import { closedPath, linePath, openPath } from './paths.ts';

/** How arrows are drawn: loads with filled heads, reactions with open ones. */
export interface ArrowStyle {
  readonly head: 'filled' | 'open';
  readonly colour: Colour;
  /** Width of the shaft, points. */
  readonly weight: number;
  /** Length of the head, points; its width follows. */
  readonly headLength: number;
}

/** Width of a head as a part of its length: a slender filled head, a wider open one. */
const filledWidth = 0.36;
const openWidth = 0.72;

/** A straight arrow from its tail to its tip. One shorter than its head has a smaller head. */
export function arrow(tail: Point, tip: Point, style: ArrowStyle): Part {
  const direction = towards(tail, tip);
  const length = Math.min(style.headLength, distance(tail, tip));
  const stroke: Stroke = { width: style.weight, colour: style.colour };
  // A shaft that ended in the very tip would blunt it.
  const shaftEnd = pointFrom(
    tip,
    direction,
    style.head === 'filled' ? -length * 0.7 : -2 * style.weight,
  );
  return together(
    stroked(linePath(tail, shaftEnd), stroke),
    arrowhead(tip, direction, { ...style, headLength: length }),
  );
}

/** The head of an arrow alone, its tip at a point. */
export function arrowhead(tip: Point, direction: Point, style: ArrowStyle): Part {
  const { head, headLength, colour, weight } = style;
  const half = (headLength * (head === 'filled' ? filledWidth : openWidth)) / 2;
  const left = pointFrom(tip, direction, -headLength, -half);
  const right = pointFrom(tip, direction, -headLength, half);
  if (head === 'filled') {
    return filled(closedPath([tip, left, right]), colour);
  }
  // The mitred corner of two strokes reaches past their meeting point: that point is drawn back.
  const mitre = weight / 2 / Math.sin(Math.atan2(half, headLength));
  const corner = pointFrom(tip, direction, -mitre);
  return stroked(openPath([left, corner, right]), {
    width: weight,
    colour,
    join: 'miter',
  });
}
