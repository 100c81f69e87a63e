import { checkLoad, checkStructure } from './check-structure.ts';
import type { BeamStructure, Load, Restraint } from './structure.ts';
import { directionTolerance, stationTolerance } from './tolerances.ts';

/**
 * The same structure with rounding taken out of its geometry, which every stage of this room
 * works on: stations that mean one place are one number (a point given as `+4 ft` and a load at
 * `25 ft` may differ in the last bit), directions along an axis are exactly so (cos 90° is not
 * quite 0), and so are forces. From here on `===` on stations is right.
 *
 * @throws RangeError where the structure is no beam: see `checkStructure`.
 */
export function tidyStructure(structure: BeamStructure): BeamStructure {
  checkStructure(structure);
  const snap = stationSnapper(
    structure.points.map(({ x }) => x),
    marginOf(structure),
  );
  const stretch = <T extends { readonly from: number; readonly to: number }>(
    one: T,
  ): T => ({
    ...one,
    from: snap(one.from),
    to: snap(one.to),
  });
  const { stiffness, curvatures } = structure;
  return {
    ...structure,
    ...(stiffness === undefined ? {} : { stiffness: stiffness.map(stretch) }),
    ...(curvatures === undefined ? {} : { curvatures: curvatures.map(stretch) }),
    supports: structure.supports.map((support) => ({
      ...support,
      x: snap(support.x),
      restraints: support.restraints.map(tidyRestraint),
    })),
    hinges: structure.hinges.map((hinge) => ({ ...hinge, x: snap(hinge.x) })),
    loads: structure.loads.map((load) => tidyLoad(load, snap)),
  };
}

/** Tidies loads that come to a tidy structure later, as `tidyStructure` does its own. */
export function tidyLoads(
  structure: BeamStructure,
): (loads: readonly Load[]) => readonly Load[] {
  const margin = marginOf(structure);
  const known = [...structure.points, ...structure.supports, ...structure.hinges].map(
    ({ x }) => x,
  );
  const bounds = [...(structure.stiffness ?? []), ...(structure.curvatures ?? [])];
  known.push(...bounds.flatMap(({ from, to }) => [from, to]));
  return (loads) => {
    for (const load of loads) checkLoad(structure, load);
    const snap = stationSnapper(known, margin);
    return loads.map((load) => tidyLoad(load, snap));
  };
}

function marginOf({ points }: BeamStructure): number {
  return stationTolerance * ((points.at(-1)?.x ?? 0) - (points[0]?.x ?? 0));
}

/** Moves a station onto a known one nearby: onto the stations given before all, else onto an earlier one asked for. */
function stationSnapper(
  stations: readonly number[],
  margin: number,
): (x: number) => number {
  // Stations by drawers as wide as the margin, so that only three of them need be looked into.
  const drawers = new Map<number, number[]>();
  const put = (x: number): void => {
    const drawer = Math.round(x / margin);
    const there = drawers.get(drawer);
    if (there === undefined) drawers.set(drawer, [x]);
    else there.push(x);
  };
  stations.forEach(put);
  return (x) => {
    const drawer = Math.round(x / margin);
    for (const near of [drawer, drawer - 1, drawer + 1]) {
      const place = drawers.get(near)?.find((other) => Math.abs(other - x) <= margin);
      if (place !== undefined) return place;
    }
    put(x);
    return x;
  };
}

function tidyRestraint(restraint: Restraint): Restraint {
  if (restraint.kind === 'moment') return restraint;
  return { ...restraint, direction: unit(restraint.direction) };
}

/** A unit vector along (x, y), a component that is only noise left out; (0, −1), down, for a force of no size. */
export function unit([x, y]: readonly [number, number]): readonly [number, number] {
  const length = Math.hypot(x, y);
  if (length === 0) return [0, -1];
  if (Math.abs(x) <= directionTolerance * length) return [0, Math.sign(y)];
  if (Math.abs(y) <= directionTolerance * length) return [Math.sign(x), 0];
  return [x / length, y / length];
}

function tidyLoad(load: Load, snap: (x: number) => number): Load {
  switch (load.kind) {
    case 'point': {
      const size = Math.max(Math.abs(load.fx), Math.abs(load.fy));
      const [fx, fy] = [load.fx, load.fy].map((force) => dropPart(force, size));
      return { ...load, x: snap(load.x), fx: fx ?? 0, fy: fy ?? 0 };
    }
    case 'distributed': {
      const [from, to] = [snap(load.from), snap(load.to)];
      if (!(to > from))
        throw new RangeError(`load ${load.id} is spread over no length`);
      const { x1, y1, x2, y2 } = load;
      const size = Math.max(...[x1, y1, x2, y2].map(Math.abs));
      return {
        ...load,
        from,
        to,
        x1: dropPart(x1, size),
        y1: dropPart(y1, size),
        x2: dropPart(x2, size),
        y2: dropPart(y2, size),
      };
    }
    case 'couple':
      return { ...load, x: snap(load.x) };
  }
}

function dropPart(component: number, size: number): number {
  return Math.abs(component) <= directionTolerance * size ? 0 : component;
}
