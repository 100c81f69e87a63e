import { breakpointsOf, sizeOf, valueAt, type Piecewise } from './piecewise.ts';
import type { BeamResult } from './solution.ts';
import type { BeamStructure } from './structure.ts';
import { dropNoise, stationTolerance } from './tolerances.ts';

/** A value just left and just right of a station; outside the beam both are 0. */
export interface BothSides {
  readonly left: number;
  readonly right: number;
}

/** The internal forces on either side of one station, N and N·m. */
export interface KeyStation {
  readonly x: number;
  /** Name of the point at the station; absent where it has none. */
  readonly point?: string;
  readonly axial: BothSides;
  readonly shear: BothSides;
  readonly moment: BothSides;
}

/**
 * Internal forces on either side of every station where something acts, and of every named
 * point, from left to right: what a diagram is drawn through. At the beam's ends the outer
 * side is 0, so that what is beside it is the force or couple at the end.
 */
export function keyStations(
  structure: BeamStructure,
  result: BeamResult,
): readonly KeyStation[] {
  const breaks = breakpointsOf(result.shear);
  const [start, end] = [breaks[0] ?? 0, breaks.at(-1) ?? 0];
  const margin = stationTolerance * (end - start);
  const isNear = (a: number, b: number): boolean => Math.abs(a - b) <= margin;
  const more = structure.points.filter(
    ({ x }) => !breaks.some((other) => isNear(other, x)),
  );
  const stations = [...breaks, ...more.map(({ x }) => x)].sort((a, b) => a - b);
  return stations.map((x) => {
    const point = structure.points.find((candidate) => isNear(candidate.x, x))?.name;
    const sides = (f: Piecewise): BothSides => ({
      left: isNear(x, start) ? 0 : dropNoise(valueAt(f, x, 'left'), sizeOf(f)),
      right: isNear(x, end) ? 0 : dropNoise(valueAt(f, x, 'right'), sizeOf(f)),
    });
    const { axial, shear, moment } = result;
    const values = { axial: sides(axial), shear: sides(shear), moment: sides(moment) };
    return { x, ...(point === undefined ? {} : { point }), ...values };
  });
}
