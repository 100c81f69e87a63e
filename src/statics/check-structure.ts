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
    refuse(!stationsOf(load).every(isOnBeam), `load ${load.id} is not on the beam`);
    refuse(!sizesOf(load).every(Number.isFinite), `load ${load.id} is not finite`);
  }
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
  for (const [index, place] of places.entries()) {
    const isDouble = places
      .slice(0, index)
      .some(({ point, x }) => point === place.point || Math.abs(x - place.x) <= margin);
    refuse(isDouble, `${kind} ${place.point} stands where another one does`);
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
