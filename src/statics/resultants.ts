import type { Load } from './structure.ts';
import { unit } from './tidy-structure.ts';
import { directionTolerance } from './tolerances.ts';

/** A load spread along the beam. */
export type DistributedLoad = Extract<Load, { kind: 'distributed' }>;

/**
 * One force in place of a distributed load or a share of it, as hand calculation finds it: a
 * rectangle acts at its middle, a triangle at a third of its base from its greater ordinate.
 *
 *        start            end                     ordinates are measured along `direction`,
 *          ┌───────────────┐        ╱│ end        so that both are ≥ 0 and so is
 *          │   rectangle   │      ╱  │            `magnitude`
 *          └───────┬───────┘    ╱────┴
 *        from      x      to   from  x  to
 */
export interface Resultant {
  readonly shape: 'rectangle' | 'triangle';
  /** The base, in metres. */
  readonly from: number;
  readonly to: number;
  /** The ordinates at `from` and `to`, N/m; of a triangle one of them is 0. */
  readonly start: number;
  readonly end: number;
  /** The way the force points, a unit vector. */
  readonly direction: readonly [x: number, y: number];
  /** Area of the shape, N. */
  readonly magnitude: number;
  /** Station of the line of action, in metres. */
  readonly x: number;
}

/**
 * The resultants of a distributed load, or of its stretch from `from` to `to`, statically equal to it: a
 * rectangle where it is uniform, a triangle where it starts or ends at nothing, both where it is
 * a trapezoid, and two triangles that point opposite ways where it changes sign (they stay right where
 * the forces cancel and only a couple is left). A load that turns its direction along the
 * way gives those of its x part and those of its y part. The stretch is cut back to the load.
 */
export function resultantsOf(
  load: DistributedLoad,
  from: number = load.from,
  to: number = load.to,
): readonly Resultant[] {
  const base = { from: Math.max(from, load.from), to: Math.min(to, load.to) };
  if (!(base.to > base.from)) return [];
  const [x1, y1] = intensityAt(load, base.from);
  const [x2, y2] = intensityAt(load, base.to);
  const size1 = Math.hypot(x1, y1);
  const size2 = Math.hypot(x2, y2);
  if (Math.abs(x1 * y2 - x2 * y1) > directionTolerance * size1 * size2) {
    return [
      ...shapesOf({ ...base, start: x1, end: x2, direction: [1, 0] }),
      ...shapesOf({ ...base, start: y1, end: y2, direction: [0, 1] }),
    ];
  }
  const direction = unit(size1 >= size2 ? [x1, y1] : [x2, y2]);
  const along = (x: number, y: number): number => x * direction[0] + y * direction[1];
  return shapesOf({ ...base, start: along(x1, y1), end: along(x2, y2), direction });
}

/** The intensity (x, y) of a distributed load at a station on it, N/m. */
export function intensityAt(
  load: DistributedLoad,
  x: number,
): readonly [number, number] {
  if (x === load.from) return [load.x1, load.y1];
  if (x === load.to) return [load.x2, load.y2];
  const share = (x - load.from) / (load.to - load.from);
  return [load.x1 + (load.x2 - load.x1) * share, load.y1 + (load.y2 - load.y1) * share];
}

/** A straight line of intensity over a base, signed along a direction. */
interface Line {
  readonly from: number;
  readonly to: number;
  readonly start: number;
  readonly end: number;
  readonly direction: readonly [number, number];
}

function shapesOf(line: Line): readonly Resultant[] {
  const { from, to, start, end } = line;
  const size = Math.max(Math.abs(start), Math.abs(end));
  const isNothing = (value: number): boolean =>
    Math.abs(value) <= directionTolerance * size;
  if (isNothing(end - start)) return [rectangle(line, start)];
  if (isNothing(start)) return [triangle({ ...line, start: 0 })];
  if (isNothing(end)) return [triangle({ ...line, end: 0 })];
  if (start * end < 0) {
    const crossing = from + ((to - from) * start) / (start - end);
    return [
      triangle({ ...line, to: crossing, end: 0 }),
      triangle({ ...line, from: crossing, start: 0 }),
    ];
  }
  const least = Math.abs(start) < Math.abs(end) ? start : end;
  return [
    rectangle(line, least),
    triangle({ ...line, start: start - least, end: end - least }),
  ];
}

function rectangle(line: Line, ordinate: number): Resultant {
  const { from, to } = line;
  const size = Math.abs(ordinate);
  const shape = { shape: 'rectangle', from, to, start: size, end: size } as const;
  const direction = turned(line.direction, ordinate);
  return { ...shape, direction, magnitude: size * (to - from), x: (from + to) / 2 };
}

function triangle(line: Line): Resultant {
  const { from, to } = line;
  const [start, end] = [Math.abs(line.start), Math.abs(line.end)];
  const direction = turned(line.direction, line.start + line.end);
  const magnitude = ((start + end) * (to - from)) / 2;
  const x = from + ((to - from) * (start > end ? 1 : 2)) / 3;
  return { shape: 'triangle', from, to, start, end, direction, magnitude, x };
}

/** The direction itself, or its opposite where what runs along it is negative. */
function turned(
  direction: readonly [number, number],
  sense: number,
): readonly [number, number] {
  return sense < 0 ? [0 - direction[0], 0 - direction[1]] : direction;
}
