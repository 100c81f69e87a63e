import { zerosOf, type Segment } from '../statics/index.ts';

/** A stretch over which the shear keeps its sign, with the area of its diagram: what the moment changes by. */
export interface ShearArea {
  readonly from: number;
  readonly to: number;
  /** N·m, signed. */
  readonly area: number;
  readonly segment: Segment;
}

/** The shear diagram in stretches of one sign: cut at every key station and wherever it passes through 0. */
export function shearAreas(segments: readonly Segment[]): readonly ShearArea[] {
  return segments.flatMap((segment) => {
    const cuts = innerZeros(segment);
    if (cuts.length === 0) {
      return [{ from: segment.from, to: segment.to, area: segment.shearArea, segment }];
    }
    const stations = [segment.from, ...cuts, segment.to];
    return stations.slice(1).map((to, index) => {
      const from = stations[index] ?? segment.from;
      return { from, to, area: areaBetween(segment, from, to), segment };
    });
  });
}

/** Stations inside a segment where its shear passes through 0. */
export function innerZeros(segment: Segment): readonly number[] {
  const { local } = segment.shear;
  if (local.length < 2) return [];
  const margin = 1e-9 * (segment.to - segment.from);
  const piece = { start: segment.from, end: segment.to, coefficients: local };
  return zerosOf({ pieces: [piece] }).flatMap((zero) =>
    zero.kind === 'at' && zero.x > segment.from + margin && zero.x < segment.to - margin
      ? [zero.x]
      : [],
  );
}

/** The integral of the shear polynomial, in powers of the distance from the segment's start. */
function areaBetween(
  { from: start, shear }: Segment,
  from: number,
  to: number,
): number {
  return shear.local.reduce(
    (all, coefficient, degree) =>
      all +
      (coefficient * ((to - start) ** (degree + 1) - (from - start) ** (degree + 1))) /
        (degree + 1),
    0,
  );
}
