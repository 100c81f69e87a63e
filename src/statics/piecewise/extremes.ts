import { sizeOf, type Extreme, type Piece, type Piecewise } from '../piecewise.ts';
import { dropNoise, tieTolerance } from '../tolerances.ts';
import {
  derivative,
  evaluatePolynomial,
  rootsOf,
  sizeOfPolynomial,
  type Polynomial,
} from './polynomial.ts';

/** The greatest and the least value of a function. */
export interface Extremes {
  readonly max: Extreme;
  readonly min: Extreme;
}

/**
 * The greatest and least value and where they are: at the ends of pieces, from either side of a
 * jump, or where the slope is zero. Values that agree to 1e-9 of the greatest size are one, found at
 * the leftmost of their stations.
 *
 * @throws RangeError for a function without pieces.
 */
export function extremesOf(f: Piecewise): Extremes {
  const noise = sizeOf(f);
  const atEnds = f.pieces.flatMap(({ coefficients, start, end }) =>
    [0, end - start].map((s) => evaluatePolynomial(coefficients, s)),
  );
  const [high, low] = [greatest(atEnds), -greatest(atEnds.map((value) => -value))];
  const margin = tieTolerance * Math.max(Math.abs(high), Math.abs(low));
  const candidates = f.pieces.flatMap((piece) => {
    const { start, end, coefficients } = piece;
    const length = end - start;
    // Turning points are sought only where the piece could reach beyond what ends of pieces have.
    const [least, most] = boundsOf(coefficients, length);
    const mayGovern = most >= high - margin || least <= low + margin;
    return [0, ...(mayGovern ? turningPoints(piece) : []), length].map((s) => ({
      value: dropNoise(evaluatePolynomial(coefficients, s), noise),
      x: s === length ? end : start + s,
    }));
  });
  const values = candidates.map(({ value }) => value);
  const [max, min] = [greatest(values), -greatest(values.map((value) => -value))];
  const size = Math.max(0, Math.abs(max), Math.abs(min));
  const leftmost = (value: number): Extreme => {
    const place = candidates.find(
      (candidate) => Math.abs(candidate.value - value) <= tieTolerance * size,
    );
    if (place === undefined)
      throw new RangeError('a function without pieces has no extremes');
    return { value, x: place.x };
  };
  return { max: leftmost(max + 0), min: leftmost(min + 0) };
}

/**
 * Two values between which a polynomial stays on 0 … length: the least and the greatest of its
 * coefficients in Bernstein's form, made a little wider for their rounding.
 * — Farin, Curves and Surfaces for CAGD, chapter 6: the curve lies in the hull of its control points (from memory).
 */
function boundsOf(
  polynomial: Polynomial,
  length: number,
): readonly [least: number, most: number] {
  let [least, most, size] = [Infinity, -Infinity, 0];
  const degree = polynomial.length - 1;
  for (let i = 0; i <= degree; i += 1) {
    let [value, weight] = [0, 1];
    for (let k = 0; k <= i; k += 1) {
      // The weight is (i over k) / (degree over k) · lengthᵏ.
      const part = weight * (polynomial[k] ?? 0);
      value += part;
      size = Math.max(size, Math.abs(part));
      weight *= ((i - k) / Math.max(degree - k, 1)) * length;
    }
    least = Math.min(least, value);
    most = Math.max(most, value);
  }
  return [least - 1e-12 * size, most + 1e-12 * size];
}

function turningPoints({ start, end, coefficients }: Piece): readonly number[] {
  const slope = derivative(coefficients);
  return rootsOf(slope, end - start, 1e-14 * sizeOfPolynomial(slope, end - start));
}

/** The greatest of any number of values. */
function greatest(values: readonly number[]): number {
  return values.reduce((most, value) => Math.max(most, value), -Infinity);
}
