import { sizeOf, type Piece, type Piecewise } from './piecewise.ts';
import {
  antiderivative,
  evaluatePolynomial,
  shiftOrigin,
  type Polynomial,
} from './piecewise/polynomial.ts';
import type { BeamResult } from './solution.ts';
import { dropNoise } from './tolerances.ts';

/** A function over one segment, seen from two origins, and its values at the segment's ends. */
export interface SegmentFunction {
  /** Coefficients of ascending powers of s = x − `from`. */
  readonly local: Polynomial;
  /** The same in powers of the station x itself. */
  readonly global: Polynomial;
  /** Just right of the segment's start and just left of its end. */
  readonly start: number;
  readonly end: number;
}

/** A stretch between two neighbouring breakpoints, over which nothing acts but spread load. */
export interface Segment {
  readonly from: number;
  readonly to: number;
  readonly axial: SegmentFunction;
  readonly shear: SegmentFunction;
  readonly moment: SegmentFunction;
  /** Area under the shear, N·m: the change of moment from start to end, worked from the shear alone. */
  readonly shearArea: number;
  /** By how much the moment leaps just right of the segment's end, N·m: minus the couple there. 0 at the beam's end. */
  readonly momentJump: number;
}

/** The segments of a result from left to right, with shear and moment as functions and the areas between. */
export function segmentsOf(result: BeamResult): readonly Segment[] {
  const { axial, shear, moment } = result;
  const size = sizeOf(moment);
  return shear.pieces.map((piece, index) => {
    const moments = functionOf(moment, index);
    const next = moment.pieces[index + 1];
    const after =
      next === undefined ? moments.end : evaluatePolynomial(next.coefficients, 0);
    return {
      from: piece.start,
      to: piece.end,
      axial: functionOf(axial, index),
      shear: functionOf(shear, index),
      moment: moments,
      shearArea: evaluatePolynomial(
        antiderivative(piece.coefficients, 0),
        piece.end - piece.start,
      ),
      momentJump: dropNoise(after - moments.end, size),
    };
  });
}

/** Axial force, shear and moment share their pieces, so one index finds all three. */
function functionOf(f: Piecewise, index: number): SegmentFunction {
  const piece: Piece = f.pieces[index] ?? { start: 0, end: 0, coefficients: [0] };
  const { start, end, coefficients: local } = piece;
  return {
    local,
    global: shiftOrigin(local, -start),
    start: evaluatePolynomial(local, 0),
    end: dropNoise(evaluatePolynomial(local, end - start), sizeOf(f)),
  };
}
