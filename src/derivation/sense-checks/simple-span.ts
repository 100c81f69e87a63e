import type { BeamStructure, Load, Support } from '../../statics/index.ts';
import { resultantsOf } from '../../statics/index.ts';
import { loadsOfCase, type CaseContext } from '../case-context.ts';

/** A beam on two supports that hold y only (one may hold x), without hinges or springs that turn. */
export interface SimpleSpan {
  readonly left: Support;
  readonly right: Support;
  readonly loads: readonly Load[];
  /** Total downward load and its centroid, where every load pushes down and none is a couple. */
  readonly downward?: { readonly total: number; readonly centroid: number };
  /** True where nothing stands outside the supports. */
  readonly isBetween: boolean;
}

/** The case seen as a simple span, where it is one. */
export function simpleSpan({ structure, mark }: CaseContext): SimpleSpan | undefined {
  const [left, right, ...more] = [...structure.supports].sort((a, b) => a.x - b.x);
  if (left === undefined || right === undefined || more.length > 0) return undefined;
  if (structure.hinges.length > 0 || !isSimple(left) || !isSimple(right))
    return undefined;
  const loads = loadsOfCase(structure, mark);
  const downward = downwardOf(loads);
  return {
    left,
    right,
    loads,
    ...(downward === undefined ? {} : { downward }),
    isBetween: loads.every((load) => isInside(load, left.x, right.x)),
  };
}

function isSimple({ restraints }: Support): boolean {
  return (
    restraints.some((r) => r.kind === 'force' && r.direction[0] === 0) &&
    restraints.every(
      (r) => r.kind === 'force' && (r.direction[0] === 0 || r.direction[1] === 0),
    )
  );
}

function isInside(load: Load, from: number, to: number): boolean {
  return load.kind === 'distributed'
    ? load.from >= from && load.to <= to
    : load.x >= from && load.x <= to;
}

function downwardOf(loads: readonly Load[]): SimpleSpan['downward'] | undefined {
  let total = 0;
  let moment = 0;
  for (const load of loads) {
    if (load.kind === 'couple') return undefined;
    const parts =
      load.kind === 'point'
        ? [{ fy: load.fy, x: load.x }]
        : resultantsOf(load).map((r) => ({ fy: r.magnitude * r.direction[1], x: r.x }));
    for (const { fy, x } of parts) {
      if (fy > 0) return undefined;
      total -= fy;
      moment -= fy * x;
    }
  }
  return total > 0 ? { total, centroid: moment / total } : undefined;
}

/** True where the structure and the loads of the case are the same seen from the other end. */
export function isSymmetric(
  structure: BeamStructure,
  { left, right, loads }: SimpleSpan,
): boolean {
  const first = structure.points[0]?.x ?? 0;
  const last = structure.points.at(-1)?.x ?? 0;
  const margin = 1e-9 * (last - first);
  const near = (a: number, b: number): boolean => Math.abs(a - b) <= margin;
  const mirror = (x: number): number => first + last - x;
  if (!near(mirror(left.x), right.x)) return false;
  const rest = [...loads];
  return loads.every((load) => {
    const index = rest.findIndex((other) => isMirror(load, other, { near, mirror }));
    if (index < 0) return false;
    rest.splice(index, 1);
    return true;
  });
}

function isMirror(
  load: Load,
  other: Load,
  {
    near,
    mirror,
  }: { near: (a: number, b: number) => boolean; mirror: (x: number) => number },
): boolean {
  if (load.kind === 'point' && other.kind === 'point') {
    return near(mirror(load.x), other.x) && load.fy === other.fy;
  }
  if (load.kind === 'distributed' && other.kind === 'distributed') {
    return (
      near(mirror(load.from), other.to) &&
      near(mirror(load.to), other.from) &&
      load.y1 === other.y2 &&
      load.y2 === other.y1
    );
  }
  return false;
}
