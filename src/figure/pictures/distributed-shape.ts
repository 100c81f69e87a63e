import type { PictureLoad } from '../figure-spec.ts';
import type { ArrowStyle } from '../ink/arrow.ts';
import { arrow } from '../ink/arrow.ts';
import type { Part } from '../ink/part.ts';
import { nothing, stroked } from '../ink/part.ts';
import { linePath, openPath } from '../ink/paths.ts';
import type { Point } from '../geometry/point.ts';
import { directionOf, distance, pointFrom } from '../geometry/point.ts';
import type { StripSetting } from './strip-setting.ts';

/** A distributed load as it is posed on the drawing. */
export interface DistributedShape {
  readonly from: number;
  readonly to: number;
  /** The point of the intensity line over a place x between `from` and `to`. */
  readonly outerAt: (x: number) => Point;
  /** The point of the member under it, where the arrows end. */
  readonly baseAt: (x: number) => Point;
  /** True where the arrows point away from the member: an uplift with no room below. */
  readonly pulls: boolean;
}

type DistributedLoad = Extract<PictureLoad, { readonly kind: 'distributed' }>;

/**
 * The shape of a distributed load across the axis. Where its intensity is positive the arrows
 * point in its direction with their tips at the member; where negative, the other way, from the
 * member's other side. `pulls` turns that round: tails at the member.
 */
export function distributedShape(
  load: DistributedLoad,
  setting: StripSetting,
  pulls: boolean,
): DistributedShape {
  const { stations, magnitudes, surfaceAt } = setting;
  const [from, to] = [stations.xOf(load.from), stations.xOf(load.to)];
  const [first, last] = magnitudes.heights(load.sizes);
  const direction = directionOf(load.degrees);
  const heightAt = (x: number): number =>
    to > from ? first + ((last - first) * (x - from)) / (to - from) : first;
  const sideAt = (height: number): number =>
    Math.sign(direction.y) * (height < 0 ? -1 : 1) * (pulls ? 1 : -1);
  const baseAt = (x: number): Point => ({ x, y: sideAt(heightAt(x)) * surfaceAt(x) });
  return {
    from,
    to,
    baseAt,
    outerAt: (x) => pointFrom(baseAt(x), direction, heightAt(x) * (pulls ? 1 : -1)),
    pulls,
  };
}

/** How far apart the arrows of a row stand, points. */
const pitch = 9.5;
/** Where the load is lower than this there is no room for an arrowhead. */
const leastArrow = 3.6;

/** The intensity line of a shape. */
export function intensityLine(shape: DistributedShape, style: ArrowStyle): Part {
  const line = { width: style.weight, colour: style.colour };
  return stroked(openPath(outline(shape)), line);
}

/** The lines from the ends of the intensity line to the member. */
export function endLines(
  { from, to, outerAt, baseAt }: DistributedShape,
  style: ArrowStyle,
): readonly Part[] {
  const line = { width: style.weight, colour: style.colour };
  return [from, to].map((x) => stroked(linePath(outerAt(x), baseAt(x)), line));
}

/** The shape without the last bit at either end, where it may touch a wall or the next load. */
export function withoutEnds(shape: DistributedShape): DistributedShape {
  const bit = Math.min(1.6, (shape.to - shape.from) / 3);
  return { ...shape, from: shape.from + bit, to: shape.to - bit };
}

/** The corners of the intensity line: straight, or through the axis where the load changes its sign. */
function outline({ from, to, outerAt, baseAt }: DistributedShape): readonly Point[] {
  const [first, last] = [outerAt(from), outerAt(to)];
  const [a, b] = [first.y - baseAt(from).y, last.y - baseAt(to).y];
  if (a * b >= 0) return [first, last];
  const crossing = from + ((to - from) * a) / (a - b);
  return [first, { x: crossing, y: 0 }, last];
}

/** The arrows under the intensity line, evenly spaced, each on its own. */
export function rowOfArrows(
  shape: DistributedShape,
  style: ArrowStyle,
): readonly Part[] {
  const { from, to } = shape;
  const count = Math.max(1, Math.round((to - from) / pitch));
  const places =
    to - from < 3
      ? [(from + to) / 2]
      : Array.from(
          { length: count + 1 },
          (_, index) => from + ((to - from) * index) / count,
        );
  return places.map((x) => arrowAt(shape, x, style));
}

function arrowAt(shape: DistributedShape, x: number, style: ArrowStyle): Part {
  const [outer, base] = [shape.outerAt(x), shape.baseAt(x)];
  if (distance(outer, base) < leastArrow) return nothing;
  return shape.pulls ? arrow(base, outer, style) : arrow(outer, base, style);
}
