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

/** What differs between the points of two states of a member. */
export function diffPoints(
  earlier: BeamDefinition,
  later: BeamDefinition,
  sides: { readonly earlier: Manner; readonly later: Manner },
): readonly InputChange[] {
  const renamed = renamedPoints(earlier, later);
  const tolerance = toleranceOf(later);
  const { mark } = later;
  const stand = { part: 'members', member: mark } as const;
  const what = (name: string): string => `point ${name} of ${mark}`;
  const station = (point: BeamPoint, side: 'earlier' | 'later'): string =>
    pointText(point, sides[side]);
  const found = earlier.points.flatMap((point): readonly InputChange[] => {
    const to = renamed.get(point.name);
    if (to !== undefined)
      return [
        { kind: 'renamed', ...stand, what: what(point.name), from: point.name, to },
      ];
    const there = later.points.find(({ name }) => name === point.name);
    const from = station(point, 'earlier');
    if (there === undefined)
      return [{ kind: 'removed', ...stand, what: what(point.name), from }];
    if (Math.abs(there.x - point.x) <= tolerance) return [];
    return [
      {
        kind: 'moved',
        ...stand,
        what: what(point.name),
        from,
        to: station(there, 'later'),
      },
    ];
  });
  const names = new Set([
    ...earlier.points.map(({ name }) => name),
    ...renamed.values(),
  ]);
  const added = later.points.filter(({ name }) => !names.has(name));
  return [
    ...found,
    ...added.map((point): InputChange => ({
      kind: 'added',
      ...stand,
      what: what(point.name),
      to: station(point, 'later'),
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
