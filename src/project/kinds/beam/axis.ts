import type { Span } from '../../../diagnostics/index.ts';
import { dimensions, parseQuantity } from '../../../units/index.ts';
import type { BeamPoint } from '../../definitions.ts';
import type { Reading } from '../../reading.ts';
import type { Named } from '../../shape/map-of.ts';
import type { Placed } from '../../shape/shape.ts';
import type { PointEntry } from './point-entry.ts';

/** Stations closer than this share of the beam's reach are one place. */
export const samePlace = 1e-9;

/** The points of a beam as far as they could be read. */
export interface Axis {
  /** Every name that the file gives, those without a readable station too. */
  readonly names: ReadonlySet<string>;
  /** Points with a station, in file order. */
  readonly points: readonly BeamPoint[];
  readonly byName: ReadonlyMap<string, BeamPoint>;
  /** True where all points are sound, so that places can be judged. */
  readonly whole: boolean;
  /** Distance within which two stations are one place, in metres. */
  readonly tolerance: number;
}

/** Works out the stations of a beam's points and checks that they run from left to right. */
export function readAxis(
  entries: Placed<readonly Named<PointEntry>[]>,
  reading: Reading,
): Axis {
  const points: BeamPoint[] = [];
  let before: number | undefined = 0;
  for (const [index, entry] of entries.value.entries()) {
    reportDoubtfulName(entry, reading);
    before = stationOf(entry, { before, isFirst: index === 0 }, reading);
    if (before === undefined || entry.value === undefined) continue;
    points.push({ name: entry.name.value, x: before, ...entry.value, span: entry.at });
  }
  const reach = points.reduce((most, point) => Math.max(most, Math.abs(point.x)), 0);
  const length = Math.abs((points.at(-1)?.x ?? 0) - (points[0]?.x ?? 0));
  const tolerance = samePlace * Math.max(reach, length);
  const inOrder = reportDisorder(points, tolerance, reading);
  if (entries.value.length < 2) reportTooFew(entries.span, reading);
  return {
    names: new Set(entries.value.map((entry) => entry.name.value)),
    byName: new Map(points.map((point) => [point.name, point])),
    points,
    whole: inOrder && points.length >= 2 && points.length === entries.value.length,
    tolerance,
  };
}

function stationOf(
  entry: Named<PointEntry>,
  from: { readonly before: number | undefined; readonly isFirst: boolean },
  reading: Reading,
): number | undefined {
  if (entry.value === undefined) return undefined;
  const { given, relative } = entry.value;
  if (!relative) return given.si;
  if (from.isFirst) {
    reading.report({
      code: 'no-point-before',
      message: `\`${entry.name.value}\` counts from the point before, and there is none`,
      span: entry.at,
      hints: ['give the first point a station, such as 0 ft'],
    });
    return undefined;
  }
  return from.before === undefined ? undefined : from.before + given.si;
}

// `6ft` as a name would read as a station wherever a place is asked for; `6` alone is a grid line.
function reportDoubtfulName(entry: Named<PointEntry>, reading: Reading): void {
  const { value: name, span } = entry.name;
  const isGridLine = /^\d+(\.\d+)?$/.test(name);
  if (isGridLine || parseQuantity(name, dimensions.length).problem !== undefined)
    return;
  reading.report({
    code: 'reads-two-ways',
    message: `\`${name}\` reads as a point's name and as a length`,
    span,
    hints: ['give the point another name'],
  });
}

function reportDisorder(
  points: readonly BeamPoint[],
  tolerance: number,
  reading: Reading,
): boolean {
  let inOrder = true;
  for (const [index, point] of points.entries()) {
    const left = points[index - 1];
    if (left === undefined || point.x - left.x > tolerance) continue;
    inOrder = false;
    const same = Math.abs(point.x - left.x) <= tolerance;
    reading.report({
      code: same ? 'points-coincide' : 'points-out-of-order',
      message: same
        ? `points \`${left.name}\` and \`${point.name}\` stand at one station`
        : `\`${point.name}\` stands left of \`${left.name}\`, the point before it`,
      span: point.span,
      hints: [same ? 'keep one of the two' : 'list the points from left to right'],
    });
  }
  return inOrder;
}

function reportTooFew(span: Span, reading: Reading): void {
  reading.report({
    code: 'too-few-points',
    message: 'a beam needs two points at least, its ends',
    span,
    hints: ['write points: { A: 0 ft, B: 20 ft }'],
  });
}
