import type { BeamStructure, Load, Support } from './structure.ts';
import { stationTolerance } from './tolerances.ts';

/**
 * Refuses a structure that no reader of definitions would build: a user's mistakes have become
 * diagnostics long before this, so what is caught here is a slip of the program.
 *
 * @throws RangeError naming the first thing wrong.
 */
export function checkStructure(structure: BeamStructure): void {
  const { points, supports, hinges, loads, cases } = structure;
  const [start, end] = [points[0]?.x ?? NaN, points.at(-1)?.x ?? NaN];
  refuse(!(end > start && end - start < Infinity), 'a beam needs two ends');
  checkOrder(points);
  const margin = stationTolerance * (end - start);
  const isOnBeam = (x: number): boolean => x >= start - margin && x <= end + margin;
  const isInside = (x: number): boolean => x > start + margin && x < end - margin;
  for (const support of supports) checkSupport(support, isOnBeam);
  for (const { point, x } of hinges) {
    refuse(!isInside(x), `hinge ${point} is not inside the beam`);
  }
  refuseDoubles('support', supports, margin);
  refuseDoubles('hinge', hinges, margin);
  for (const load of loads) {
    refuse(!cases.includes(load.case), `load ${load.id} is of no case listed`);
    checkLoad(structure, load);
  }
  checkStiffness(structure, margin);
  for (const { id, from, to, curvature } of structure.curvatures ?? []) {
    refuse(!isOnBeam(from) || !isOnBeam(to), `curvature ${id} is not on the beam`);
    refuse(!(to > from), `curvature ${id} is spread over no length`);
    refuse(!Number.isFinite(curvature), `curvature ${id} is not finite`);
  }
}

/**
 * Refuses a load that is not on the beam or has no size.
 *
 * @throws RangeError naming it.
 */
export function checkLoad({ points }: BeamStructure, load: Load): void {
  const [start, end] = [points[0]?.x ?? NaN, points.at(-1)?.x ?? NaN];
  const margin = stationTolerance * (end - start);
  const isOnBeam = (x: number): boolean => x >= start - margin && x <= end + margin;
  refuse(!stationsOf(load).every(isOnBeam), `load ${load.id} is not on the beam`);
  refuse(!sizesOf(load).every(Number.isFinite), `load ${load.id} is not finite`);
}

function checkStiffness({ points, stiffness }: BeamStructure, margin: number): void {
  if (stiffness === undefined) return;
  let reached = points[0]?.x ?? NaN;
  for (const { from, to, EI } of stiffness) {
    refuse(!(Math.abs(from - reached) <= margin), `no stiffness from x = ${reached}`);
    refuse(!(EI > 0 && EI < Infinity), `EI = ${EI} from x = ${from}`);
    refuse(!(to - from > margin), `stiffness from x = ${from} is for no length`);
    reached = to;
  }
  const end = points.at(-1)?.x ?? NaN;
  refuse(!(Math.abs(end - reached) <= margin), `no stiffness from x = ${reached}`);
}

function checkOrder(points: BeamStructure['points']): void {
  for (const [index, point] of points.entries()) {
    const before = points[index - 1]?.x ?? -Infinity;
    refuse(!(point.x > before), `point ${point.name} is not right of the one before`);
  }
}

function checkSupport(support: Support, isOnBeam: (x: number) => boolean): void {
  refuse(!isOnBeam(support.x), `support ${support.point} is not on the beam`);
  for (const restraint of support.restraints) {
    const { stiffness = 1 } = restraint;
    refuse(
      !(stiffness > 0 && stiffness < Infinity),
      `support ${support.point} has a spring of ${stiffness}`,
    );
    if (restraint.kind === 'moment') continue;
    const length = Math.hypot(...restraint.direction);
    refuse(
      !(Math.abs(length - 1) < 1e-6),
      `support ${support.point} has a direction of length ${length}`,
    );
  }
}

/** Two of a kind at one point would be told apart by nothing. */
function refuseDoubles(
  kind: string,
  places: readonly { readonly point: string; readonly x: number }[],
  margin: number,
): void {
  const names = new Set<string>();
  for (const { point } of places) {
    refuse(names.has(point), `${kind} ${point} stands where another one does`);
    names.add(point);
  }
  const inOrder = places.toSorted((a, b) => a.x - b.x);
  for (const [index, { point, x }] of inOrder.entries()) {
    const before = inOrder[index - 1]?.x ?? -Infinity;
    refuse(x - before <= margin, `${kind} ${point} stands where another one does`);
  }
}

/** The station of a load, or the two between which it is spread. */
function stationsOf(load: Load): readonly number[] {
  return load.kind === 'distributed' ? [load.from, load.to] : [load.x];
}

function sizesOf(load: Load): readonly number[] {
  switch (load.kind) {
    case 'point':
      return [load.fx, load.fy];
    case 'distributed':
      return [load.x1, load.y1, load.x2, load.y2];
    case 'couple':
      return [load.m];
  }
}

function refuse(isWrong: boolean, what: string): void {
  if (isWrong) throw new RangeError(what);
}
