import type { Piecewise } from '../piecewise.ts';
import { mergeBreakpoints, polynomialFrom } from '../piecewise/combine.ts';
import {
  antiderivative,
  evaluatePolynomial,
  type Polynomial,
} from '../piecewise/polynomial.ts';
import type { BeamStructure } from '../structure.ts';
import { stationTolerance } from '../tolerances.ts';

/** A stretch over which every function is one polynomial and the stiffness is one. */
export interface Stretch {
  readonly from: number;
  readonly to: number;
  /** E times I, N·m²; 1 where it is not known. */
  readonly EI: number;
  /** The functions asked for, in powers of the distance from `from`. */
  readonly functions: readonly Polynomial[];
}

/** The stretches on which some functions along a beam are smooth, the stiffness changing at none of them inside. */
export function stretchesOf(
  { points, stiffness = [] }: BeamStructure,
  functions: readonly Piecewise[],
): readonly Stretch[] {
  const from = points[0]?.x ?? 0;
  const to = points.at(-1)?.x ?? 0;
  const steps = stiffness.map((stretch) => stretch.from);
  const stations = mergeBreakpoints([
    ...functions,
    pieces([from, to]),
    ...steps.filter((x) => x > from && x < to).map((x) => pieces([from, x, to])),
  ]);
  return stations.slice(1).map((end, index) => {
    const start = stations[index] ?? end;
    return {
      from: start,
      to: end,
      EI: stiffnessAt(stiffness, (start + end) / 2),
      functions: functions.map((f) => polynomialFrom(f, start, end)),
    };
  });
}

function pieces(stations: readonly number[]): Piecewise {
  return {
    pieces: stations.slice(1).map((end, index) => ({
      start: stations[index] ?? end,
      end,
      coefficients: [0],
    })),
  };
}

/** The stiffness at a station inside a stretch; 1 where none is known. */
export function stiffnessAt(
  stiffness: NonNullable<BeamStructure['stiffness']>,
  x: number,
): number {
  return stiffness.find(({ to }) => x < to)?.EI ?? stiffness.at(-1)?.EI ?? 1;
}

/** The product of two polynomials. */
export function productOf(a: Polynomial, b: Polynomial): Polynomial {
  const result = new Array<number>(Math.max(1, a.length + b.length - 1)).fill(0);
  for (const [i, x] of a.entries())
    for (const [j, y] of b.entries()) result[i + j] = (result[i + j] ?? 0) + x * y;
  return result;
}

/** The integral of a polynomial from 0 to a length. */
export function integralOf(f: Polynomial, length: number): number {
  return evaluatePolynomial(antiderivative(f, 0), length);
}

/** The curvature that a beam would take by itself in a case, as a function along it; undefined where it would take none. */
export function freeCurvature(
  { points, curvatures = [] }: BeamStructure,
  mark: string,
): Piecewise | undefined {
  const acting = curvatures.filter((one) => one.case === mark && one.curvature !== 0);
  if (acting.length === 0) return undefined;
  const ends = [points[0]?.x ?? 0, points.at(-1)?.x ?? 0] as const;
  const all = [...ends, ...acting.flatMap(({ from, to }) => [from, to])].sort(
    (a, b) => a - b,
  );
  const margin = stationTolerance * (ends[1] - ends[0]);
  const stations = all.filter((x, i) => i === 0 || x - (all[i - 1] ?? x) > margin);
  return {
    pieces: stations.slice(1).map((end, index) => {
      const start = stations[index] ?? end;
      const middle = (start + end) / 2;
      const here = acting.filter(({ from, to }) => from < middle && middle < to);
      const total = here.reduce((sum, { curvature }) => sum + curvature, 0);
      return { start, end, coefficients: [total] };
    }),
  };
}
