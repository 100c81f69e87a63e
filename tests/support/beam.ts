import type {
  BeamStructure,
  Load,
  Restraint,
  Support,
} from '../../src/statics/index.ts';

/**
 * Builders that let a beam in a test look like the beam: `beam({ points: { A: 0, B: 6 },
 * supports: { A: pin, B: roller() }, loads: [down(12, 3)] })`. Lengths and forces are whatever
 * consistent units the test thinks in; stations of loads may be points' names.
 */
export interface BeamSketch {
  readonly points: Readonly<Record<string, number>>;
  readonly supports?: Readonly<Record<string, SupportSketch>>;
  readonly hinges?: readonly string[];
  readonly loads?: readonly LoadSketch[];
  /** Cases to be solved; by default those that the loads name, or `all`. */
  readonly cases?: readonly string[];
}

export type SupportSketch = Pick<Support, 'type' | 'restraints'>;

type Place = number | string;

export interface LoadSketch {
  readonly case?: string;
  readonly at?: Place;
  readonly span?: readonly [Place, Place];
  readonly side?: 'left' | 'right';
  readonly fx?: number;
  readonly fy?: number;
  readonly m?: number;
  readonly x?: readonly [number, number];
  readonly y?: readonly [number, number];
}

const alongX: Restraint = { kind: 'force', direction: [1, 0] };
const alongY: Restraint = { kind: 'force', direction: [0, 1] };
const moment: Restraint = { kind: 'moment' };

export const pin: SupportSketch = { type: 'pin', restraints: [alongX, alongY] };
export const fixed: SupportSketch = {
  type: 'fixed',
  restraints: [alongX, alongY, moment],
};
export const guide: SupportSketch = { type: 'guide', restraints: [alongX, moment] };

/** A roller whose reaction points along an angle in degrees from +x; 90 is an ordinary one. */
export function roller(degrees: number = 90): SupportSketch {
  const angle = (degrees * Math.PI) / 180;
  const direction = [Math.cos(angle), Math.sin(angle)] as const;
  return { type: 'roller', restraints: [{ kind: 'force', direction }] };
}

/** A spring of a stiffness along y, or along x. */
export function spring(stiffness: number, along: 'x' | 'y' = 'y'): SupportSketch {
  const restraint = along === 'x' ? alongX : alongY;
  return { type: 'spring', restraints: [{ ...restraint, stiffness }] };
}

/** A force downward at a place. */
export function down(force: number, at: Place, of: LoadSketch = {}): LoadSketch {
  return { ...of, at, fx: 0, fy: -force };
}

/** A force to the right at a place. */
export function right(force: number, at: Place, of: LoadSketch = {}): LoadSketch {
  return { ...of, at, fx: force, fy: 0 };
}

/** A couple, counterclockwise positive. */
export function turn(m: number, at: Place, of: LoadSketch = {}): LoadSketch {
  return { ...of, at, m };
}

/** A downward load straight from one intensity to another (uniform where one is given). */
export function spread(
  intensity: number | readonly [number, number],
  from: Place,
  to: Place,
  of: LoadSketch = {},
): LoadSketch {
  const [start, end] =
    typeof intensity === 'number' ? [intensity, intensity] : intensity;
  return { ...of, span: [from, to], x: [0, 0], y: [-start, -end] };
}

/** A load along the beam, rightward, straight from one intensity to another. */
export function spreadRight(
  [start, end]: readonly [number, number],
  from: Place,
  to: Place,
): LoadSketch {
  return { span: [from, to], x: [start, end], y: [0, 0] };
}

/** The structure that a sketch stands for. */
export function beam(sketch: BeamSketch): BeamStructure {
  const stationOf = (place: Place): number =>
    typeof place === 'number' ? place : sketch.points[place]!;
  const loads = (sketch.loads ?? []).map((load, index) =>
    asLoad(load, index, stationOf),
  );
  const named = [...new Set(loads.map((load) => load.case))];
  return {
    kind: 'beam',
    points: Object.entries(sketch.points).map(([name, x]) => ({ name, x })),
    supports: Object.entries(sketch.supports ?? {}).map(([point, support]) => ({
      point,
      x: stationOf(point),
      ...support,
    })),
    hinges: (sketch.hinges ?? []).map((point) => ({ point, x: stationOf(point) })),
    loads,
    cases: sketch.cases ?? (named.length > 0 ? named : ['all']),
  };
}

function asLoad(
  sketch: LoadSketch,
  index: number,
  stationOf: (place: Place) => number,
): Load {
  const head = { id: `load-${index + 1}`, case: sketch.case ?? 'all' };
  const { span, at, m, side, fx = 0, fy = 0, x = [0, 0], y = [0, 0] } = sketch;
  if (span !== undefined) {
    const [from, to] = [stationOf(span[0]), stationOf(span[1])];
    return {
      ...head,
      kind: 'distributed',
      from,
      to,
      x1: x[0],
      y1: y[0],
      x2: x[1],
      y2: y[1],
    };
  }
  const station = stationOf(at!);
  if (m === undefined) return { ...head, kind: 'point', x: station, fx, fy };
  return {
    ...head,
    kind: 'couple',
    x: station,
    m,
    ...(side === undefined ? {} : { side }),
  };
}
