import { sizeOf, type Extreme, type Piecewise } from '../piecewise.ts';
import { dropNoise, tieTolerance } from '../tolerances.ts';
import {
  derivative,
  evaluatePolynomial,
  rootsOf,
  sizeOfPolynomial,
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
  const candidates = f.pieces.flatMap(({ start, end, coefficients }) => {
    const length = end - start;
    const slope = derivative(coefficients);
    const floor = 1e-14 * sizeOfPolynomial(slope, length);
    return [0, ...rootsOf(slope, length, floor), length].map((s) => ({
      value: dropNoise(evaluatePolynomial(coefficients, s), noise),
      x: s === length ? end : start + s,
    }));
  });
  const values = candidates.map(({ value }) => value);
  const size = Math.max(0, ...values.map(Math.abs));
  const leftmost = (value: number): Extreme => {
    const place = candidates.find(
      (candidate) => Math.abs(candidate.value - value) <= tieTolerance * size,
    );
    if (place === undefined)
      throw new RangeError('a function without pieces has no extremes');
    return { value, x: place.x };
  };
  return { max: leftmost(Math.max(...values)), min: leftmost(Math.min(...values)) };
}
