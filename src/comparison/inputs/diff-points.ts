import type { InputChange } from '../comparison.ts';
import type { BeamDefinition, BeamPoint } from '../../project/index.ts';
import { givenText, stationText } from './value.ts';

/** How stations are written. */
export interface Manner {
  readonly isFeetInches: boolean;
}

/** Share of a member's length within which two stations are one. */
const nearness = 1e-9;

/**
 * Points of one member that only changed their names, earlier name to later: the names that are left
 * over stand at one station.
 */
export function renamedPoints(
  earlier: BeamDefinition,
  later: BeamDefinition,
): ReadonlyMap<string, string> {
  const gone = without(earlier.points, later.points);
  const come = without(later.points, earlier.points);
  const tolerance = toleranceOf(later);
  return new Map(
    gone.flatMap(({ name, x }) => {
      const there = come.find((point) => Math.abs(point.x - x) <= tolerance);
      return there === undefined ? [] : [[name, there.name] as const];
    }),
  );
}

/**
 * The other reading of the same points: whatever stands at an old station is the old point, whatever it
 * is called (a point put in between may have taken over a name). Undefined where two points would share
 * a name then.
 */
export function pointsByStation(
  earlier: BeamDefinition,
  later: BeamDefinition,
): ReadonlyMap<string, string> | undefined {
  const tolerance = toleranceOf(later);
  const there = earlier.points.map(({ name, x }) => {
    const point = later.points.find((one) => Math.abs(one.x - x) <= tolerance);
    return [name, point?.name ?? name] as const;
  });
  const taken = new Set(there.map(([, name]) => name));
  return taken.size < there.length ? undefined : new Map(there);
}

/** What differs between the points of two states of a member; `names` read the earlier points in later names. */
export function diffPoints(
  earlier: BeamDefinition,
  later: BeamDefinition,
  names: (name: string) => string,
  sides: { readonly earlier: Manner; readonly later: Manner },
): readonly InputChange[] {
  const tolerance = toleranceOf(later);
  const { mark } = later;
  const stand = { part: 'members', member: mark } as const;
  const what = (name: string): string => `point ${name} of ${mark}`;
  const found = earlier.points.flatMap((point): readonly InputChange[] => {
    const to = names(point.name);
    const there = later.points.find(({ name }) => name === to);
    const from = pointText(point, sides.earlier);
    if (there === undefined)
      return [{ kind: 'removed', ...stand, what: what(point.name), from }];
    const renamed: InputChange = {
      kind: 'renamed',
      ...stand,
      what: what(point.name),
      from: point.name,
      to,
    };
    const moved: InputChange = {
      kind: 'moved',
      ...stand,
      what: what(to),
      from,
      to: pointText(there, sides.later),
    };
    return [
      ...(to === point.name ? [] : [renamed]),
      ...(Math.abs(there.x - point.x) <= tolerance ? [] : [moved]),
    ];
  });
  const known = new Set(earlier.points.map(({ name }) => names(name)));
  const added = later.points.filter(({ name }) => !known.has(name));
  return [
    ...found,
    ...added.map((point): InputChange => ({
      kind: 'added',
      ...stand,
      what: what(point.name),
      to: pointText(point, sides.later),
    })),
  ];
}

// A distance from the point before is no station: the station is worked out.
function pointText(
  { relative, given, x }: BeamPoint,
  { isFeetInches }: Manner,
): string {
  if (!relative) return givenText(given);
  const isFoot = given.unit.factors[0]?.symbol === 'ft';
  return stationText(x, {
    ...given,
    compound: given.compound || (isFoot && isFeetInches),
  });
}

function without(
  points: readonly BeamPoint[],
  others: readonly BeamPoint[],
): readonly BeamPoint[] {
  return points.filter(({ name }) => others.every((other) => other.name !== name));
}

function toleranceOf({ points }: BeamDefinition): number {
  return nearness * Math.abs((points.at(-1)?.x ?? 0) - (points[0]?.x ?? 0));
}
