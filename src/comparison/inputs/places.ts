import type { BeamDefinition, BeamPlace } from '../../project/index.ts';
import type { Names } from './names.ts';
import { givenText, stationText } from './value.ts';

/** A place on a member, with its name on the later side. */
export interface Place {
  /** Station, m. */
  readonly x: number;
  /** The point's name, by the later side. */
  readonly point?: string;
  /** `B`, or `8.5 m`. */
  readonly words: string;
  /** Which end of the member it is. */
  readonly end?: 'first' | 'last';
}

/** How places of one member are read. */
export interface Axis {
  readonly beam: BeamDefinition;
  readonly names: Names;
  /** Stations nearer to one another than this are one, m. */
  readonly tolerance: number;
}

/** Stations that differ by less than this share of the member's length are one. */
const nearness = 1e-9;

/** The axis of a member, its points by their later names. */
export function axisOf(beam: BeamDefinition, names: Names): Axis {
  const length = (beam.points.at(-1)?.x ?? 0) - (beam.points[0]?.x ?? 0);
  return { beam, names, tolerance: nearness * length };
}

/** A place of the file. */
export function placeOn(axis: Axis, place: BeamPlace): Place {
  const { beam, names } = axis;
  const end = endAt(axis, place.x);
  const point =
    place.point === undefined ? undefined : names.point(beam.mark, place.point);
  return {
    x: place.x,
    words: point ?? stationWords(axis, place),
    ...(point === undefined ? {} : { point }),
    ...(end === undefined ? {} : { end }),
  };
}

function stationWords({ beam }: Axis, { given, x }: BeamPlace): string {
  if (given !== undefined) return givenText(given);
  const like = beam.points.at(-1)?.given;
  return like === undefined ? '' : stationText(x, like);
}

function endAt({ beam, tolerance }: Axis, x: number): Place['end'] {
  if (isNear(x, beam.points[0]?.x, tolerance)) return 'first';
  return isNear(x, beam.points.at(-1)?.x, tolerance) ? 'last' : undefined;
}

/** True where two places are one: the same point, wherever it lies now, or the same station. */
export function samePlace(one: Place, other: Place, tolerance: number): boolean {
  const isNamedAlike = one.point !== undefined && one.point === other.point;
  return isNamedAlike || isNear(one.x, other.x, tolerance);
}

/** True where two stretches are one: both the whole member, or from the same place to the same. */
export function sameStretch(
  [from, to]: readonly [Place, Place],
  [otherFrom, otherTo]: readonly [Place, Place],
  tolerance: number,
): boolean {
  if (isWhole([from, to]) && isWhole([otherFrom, otherTo])) return true;
  return samePlace(from, otherFrom, tolerance) && samePlace(to, otherTo, tolerance);
}

/** True for a stretch over the whole member. */
export function isWhole([from, to]: readonly [Place, Place]): boolean {
  return from.end === 'first' && to.end === 'last';
}

/** `at B`, `from A to C`, `over its whole length`; empty without a place. */
export function whereabouts(places: readonly Place[]): string {
  const [from, to] = places;
  if (from === undefined) return '';
  if (to === undefined) return `at ${from.words}`;
  return isWhole([from, to])
    ? 'over its whole length'
    : `from ${from.words} to ${to.words}`;
}

function isNear(one: number, other: number | undefined, tolerance: number): boolean {
  return other !== undefined && Math.abs(one - other) <= tolerance;
}
