import type { FactoredLoad } from './loading.ts';
import type { Piece, Piecewise } from './piecewise.ts';
import { evaluatePolynomial, trim } from './piecewise/polynomial.ts';
import { intensityAt, type DistributedLoad } from './resultants.ts';
import type { BeamStructure } from './structure.ts';
import { dropNoise } from './tolerances.ts';

/** Forces and couples at one station, N and N·m; right, up and counterclockwise positive. */
export interface StationForce {
  readonly x: number;
  readonly fx: number;
  readonly fy: number;
  readonly m: number;
}

/** What runs through a beam, and what is left of it beyond the right end: nothing, if all is well. */
export interface InternalForces {
  readonly axial: Piecewise;
  readonly shear: Piecewise;
  readonly moment: Piecewise;
  readonly closing: {
    readonly axial: number;
    readonly shear: number;
    readonly moment: number;
  };
}

/** Shear and moment at one place, N and N·m. */
export interface ShearAndMoment {
  readonly shear: number;
  readonly moment: number;
}

/** Sizes to judge noise by: the sum of all forces (N) and of all moments (N·m). */
export interface Sizes {
  readonly force: number;
  readonly moment: number;
  /**
   * Shear and moment just right of some stations, where they are known better than by adding up from
   * the left end: each stretch then starts from them, so that rounding does not grow along the beam.
   */
  readonly anchors?: ReadonlyMap<number, ShearAndMoment>;
}

/**
 * Internal forces from the left end to the right, from cut to cut: with w the load upward,
 *
 *      N(s) = N₀ − ∫wₓ      V(s) = V₀ + ∫w      M(s) = M₀ + V₀ s + ∬w
 *
 * and at a station V leaps by the force up, N by minus the force right, M by minus the couple
 * counterclockwise. The three share their breakpoints: ends, supports, hinges and stations of loads.
 */
export function internalForces(
  structure: BeamStructure,
  reactions: readonly StationForce[],
  loads: readonly FactoredLoad[],
  sizes: Sizes,
): InternalForces {
  const forces = new Map<number, StationForce>();
  for (const force of [...reactions, ...loads.flatMap(pointForce)]) {
    const { x } = force;
    const { fx, fy, m } = forces.get(x) ?? { fx: 0, fy: 0, m: 0 };
    forces.set(x, { x, fx: fx + force.fx, fy: fy + force.fy, m: m + force.m });
  }
  const spread = loads.flatMap(spreadLoad);
  const stations = breakStations(structure, loads);
  const pieces = { axial: [] as Piece[], shear: [] as Piece[], moment: [] as Piece[] };
  let now = { axial: 0, shear: 0, moment: 0 };
  // What the anchors have taken out on the way, brought along: it still counts as not closed at the end.
  let taken = { shear: 0, moment: 0 };
  for (const [index, start] of stations.entries()) {
    now = leap(now, forces.get(start));
    const end = stations[index + 1];
    if (end === undefined) break;
    const anchor = sizes.anchors?.get(start);
    if (anchor !== undefined) {
      const shear = taken.shear + now.shear - anchor.shear;
      taken = { shear, moment: taken.moment + now.moment - anchor.moment };
      now = { ...now, ...anchor };
    }
    const begin = {
      axial: dropNoise(now.axial, sizes.force) + 0,
      shear: anchor?.shear ?? dropNoise(now.shear, sizes.force) + 0,
      moment: anchor?.moment ?? dropNoise(now.moment, sizes.moment) + 0,
    };
    taken = { ...taken, moment: taken.moment + taken.shear * (end - start) };
    const curves = curvesBetween(begin, spread, [start, end]);
    for (const name of names)
      pieces[name].push({ start, end, coefficients: curves[name] });
    now = {
      axial: evaluatePolynomial(curves.axial, end - start),
      shear: evaluatePolynomial(curves.shear, end - start),
      moment: evaluatePolynomial(curves.moment, end - start),
    };
  }
  return {
    axial: { pieces: pieces.axial },
    shear: { pieces: pieces.shear },
    moment: { pieces: pieces.moment },
    closing: {
      axial: now.axial,
      shear: now.shear + taken.shear,
      moment: now.moment + taken.moment,
    },
  };
}

const names = ['axial', 'shear', 'moment'] as const;

type ThreeValues = Readonly<Record<(typeof names)[number], number>>;

function leap(before: ThreeValues, force: StationForce | undefined): ThreeValues {
  if (force === undefined) return before;
  return {
    axial: before.axial - force.fx,
    shear: before.shear + force.fy,
    moment: before.moment - force.m,
  };
}

function pointForce({ load, factor }: FactoredLoad): readonly StationForce[] {
  switch (load.kind) {
    case 'distributed':
      return [];
    case 'point':
      return [{ x: load.x, fx: factor * load.fx, fy: factor * load.fy, m: 0 }];
    case 'couple':
      return [{ x: load.x, fx: 0, fy: 0, m: factor * load.m }];
  }
}

interface Spread {
  readonly load: DistributedLoad;
  readonly factor: number;
}

function spreadLoad({ load, factor }: FactoredLoad): readonly Spread[] {
  return load.kind === 'distributed' ? [{ load, factor }] : [];
}

function breakStations(
  structure: BeamStructure,
  loads: readonly FactoredLoad[],
): readonly number[] {
  const stations = new Set<number>([
    structure.points[0]?.x ?? 0,
    structure.points.at(-1)?.x ?? 0,
    ...structure.supports.map((support) => support.x),
    ...structure.hinges.map((hinge) => hinge.x),
    ...loads.flatMap(({ load }) =>
      load.kind === 'distributed' ? [load.from, load.to] : [load.x],
    ),
  ]);
  return [...stations].sort((a, b) => a - b);
}

/** The coefficients of N, V and M over a stretch with no breakpoint inside. */
function curvesBetween(
  begin: ThreeValues,
  spread: readonly Spread[],
  [start, end]: readonly [number, number],
): Readonly<Record<(typeof names)[number], readonly number[]>> {
  const over = spread.filter(({ load }) => load.from < end && load.to > start);
  const line = (component: 0 | 1): readonly [number, number] => {
    // Intensity at the start and its slope; loads that cancel leave exactly nothing.
    let [q, slope, sizeQ, sizeSlope] = [0, 0, 0, 0];
    for (const { load, factor } of over) {
      const at = factor * intensityAt(load, start)[component];
      const rise = (factor * riseOf(load)[component]) / (load.to - load.from);
      q += at;
      slope += rise;
      sizeQ += Math.abs(at);
      sizeSlope += Math.abs(rise);
    }
    return [dropNoise(q, sizeQ), dropNoise(slope, sizeSlope)];
  };
  const [qx, slopeX] = line(0);
  const [qy, slopeY] = line(1);
  const { axial, shear, moment } = begin;
  return {
    axial: trim([axial, 0 - qx, 0 - slopeX / 2]),
    shear: trim([shear, qy, slopeY / 2]),
    moment: trim([moment, shear, qy / 2, slopeY / 6]),
  };
}

function riseOf(load: DistributedLoad): readonly [number, number] {
  return [load.x2 - load.x1, load.y2 - load.y1];
}
