import type { PathStep } from '../../drawing/index.ts';
import type { Piece, Piecewise } from '../../statics/index.ts';
import type { Point } from '../geometry/point.ts';

/** From stations and values to the drawing: x to the right, y from the base line, down. */
export interface PlotScale {
  readonly xOf: (station: number) => number;
  readonly yOf: (value: number) => number;
}

/** A curve of higher degree than three is drawn in so many cubic parts a piece. */
const partsOfHighDegree = 12;

/**
 * A function as a path from its first value to its last: straight lines and Bézier curves, with
 * an upright line at each jump. Pieces up to the third degree are drawn exactly; of a higher
 * degree in cubic parts that share value and slope with the curve at both ends.
 */
export function curvePath(f: Piecewise, scale: PlotScale): readonly PathStep[] {
  return f.pieces.flatMap((piece, index): readonly PathStep[] => {
    const first = pointAt(piece, piece.start, scale);
    const start: PathStep = [index === 0 ? 'M' : 'L', first.x, first.y];
    return [start, ...piecePath(piece, scale)];
  });
}

function piecePath(piece: Piece, scale: PlotScale): readonly PathStep[] {
  const degree = degreeOf(piece.coefficients);
  if (degree <= 1) {
    const end = pointAt(piece, piece.end, scale);
    return [['L', end.x, end.y]];
  }
  const parts = degree <= 3 ? 1 : partsOfHighDegree;
  const step = (piece.end - piece.start) / parts;
  return Array.from({ length: parts }, (_, index) =>
    cubicPart(piece, piece.start + index * step, step, scale),
  );
}

/**
 * The Bézier curve with the value and the slope of a piece at both ends of a stretch: its inner
 * control points stand at the thirds, on the end tangents. For degree three and less that is the
 * piece itself (Farin, Curves and Surfaces for CAGD, 4th ed., section 6.5: cubic Hermite form).
 */
function cubicPart(
  piece: Piece,
  from: number,
  length: number,
  scale: PlotScale,
): PathStep {
  const { xOf, yOf } = scale;
  const to = from + length;
  const [start, end] = [pieceValue(piece, from), pieceValue(piece, to)];
  const a = start + (slopeOf(piece, from) * length) / 3;
  const b = end - (slopeOf(piece, to) * length) / 3;
  return [
    'C',
    xOf(from + length / 3),
    yOf(a),
    xOf(to - length / 3),
    yOf(b),
    xOf(to),
    yOf(end),
  ];
}

function degreeOf(coefficients: readonly number[]): number {
  return coefficients.findLastIndex((coefficient) => coefficient !== 0);
}

function pointAt(piece: Piece, x: number, { xOf, yOf }: PlotScale): Point {
  return { x: xOf(x), y: yOf(pieceValue(piece, x)) };
}

/** The value of a piece at a station on it. */
export function pieceValue({ start, coefficients }: Piece, x: number): number {
  return coefficients.reduceRight(
    (sum, coefficient) => sum * (x - start) + coefficient,
    0,
  );
}

function slopeOf({ start, coefficients }: Piece, x: number): number {
  return coefficients.reduceRight(
    (sum, coefficient, power) =>
      power === 0 ? sum : sum * (x - start) + coefficient * power,
    0,
  );
}
