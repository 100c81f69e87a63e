import { dropNoise, stationTolerance } from '../tolerances.ts';

/** Coefficients of ascending powers: c₀ + c₁ s + c₂ s² …; none stands for zero. */
export type Polynomial = readonly number[];

/** The value at s; exactly 0 where what is left of the terms is only their rounding. */
export function evaluatePolynomial(polynomial: Polynomial, s: number): number {
  let value = 0;
  let size = 0;
  for (let power = polynomial.length - 1; power >= 0; power -= 1) {
    const coefficient = polynomial[power] ?? 0;
    value = value * s + coefficient;
    size = size * Math.abs(s) + Math.abs(coefficient);
  }
  return dropNoise(value, size) + 0;
}

/** An upper bound of the size on 0 … length: the sum of the sizes of the terms at its end. */
export function sizeOfPolynomial(polynomial: Polynomial, length: number): number {
  return polynomial.reduceRight((size, c) => size * length + Math.abs(c), 0);
}

/** The slope, as a polynomial. */
export function derivative(polynomial: Polynomial): Polynomial {
  return polynomial.slice(1).map((coefficient, index) => coefficient * (index + 1));
}

/** The integral that starts from `constant` at s = 0. */
export function antiderivative(polynomial: Polynomial, constant: number): Polynomial {
  return [
    constant,
    ...polynomial.map((coefficient, index) => coefficient / (index + 1)),
  ];
}

/** The same curve in powers of (s − by): the coefficients as seen from s = `by`. */
export function shiftOrigin(polynomial: Polynomial, by: number): Polynomial {
  if (by === 0) return polynomial;
  const shifted = [...polynomial];
  // Repeated synthetic division — Knuth, The Art of Computer Programming 2, section 4.6.4 (from memory).
  for (let start = 0; start < shifted.length - 1; start += 1) {
    for (let power = shifted.length - 2; power >= start; power -= 1) {
      shifted[power] = (shifted[power] ?? 0) + by * (shifted[power + 1] ?? 0);
    }
  }
  return shifted;
}

/** Leading terms that are nothing on 0 … length left out; at least one coefficient stays. */
export function trim(polynomial: Polynomial): Polynomial {
  let count = polynomial.length;
  while (count > 1 && polynomial[count - 1] === 0) count -= 1;
  return count === 0 ? [0] : polynomial.slice(0, count);
}

/**
 * The roots on 0 … length in ascending order, each once: where the curve crosses zero and where
 * it only touches it. A value within `floor` of zero at an end or a turning point is a root. Of
 * a polynomial that is zero throughout there are none.
 *
 * Between two turning points a polynomial crosses zero once at most, so the roots of the slope,
 * found the same way, fence in those of the curve. That takes any degree and misses none.
 */
export function rootsOf(
  polynomial: Polynomial,
  length: number,
  floor: number,
): readonly number[] {
  const curve = withoutFaintTerms(polynomial, length, floor);
  if (curve.length <= 1) return [];
  const slope = derivative(curve);
  const slopeFloor = 1e-14 * sizeOfPolynomial(slope, length);
  const fences = [0, ...rootsOf(slope, length, slopeFloor), length];
  const near = stationTolerance * length;
  const roots: number[] = [];
  const add = (root: number): void => {
    const last = roots.at(-1);
    if (last === undefined || root - last > near) roots.push(root);
  };
  const isZero = (value: number): boolean => Math.abs(value) <= floor;
  for (const [index, from] of fences.entries()) {
    const atFrom = evaluatePolynomial(curve, from);
    if (isZero(atFrom)) add(from);
    const to = fences[index + 1];
    if (to === undefined || isZero(atFrom)) continue;
    const atTo = evaluatePolynomial(curve, to);
    if (!isZero(atTo) && atFrom < 0 !== atTo < 0) add(crossing(curve, slope, from, to));
  }
  return roots;
}

/** Drops leading terms that add less than the floor anywhere, which would only invent far-off turning points. */
function withoutFaintTerms(
  polynomial: Polynomial,
  length: number,
  floor: number,
): Polynomial {
  const size = sizeOfPolynomial(polynomial, length);
  const faint = Math.max(1e-14 * size, floor * 1e-3);
  let count = polynomial.length;
  while (
    count > 1 &&
    Math.abs(polynomial[count - 1] ?? 0) * length ** (count - 1) <= faint
  ) {
    count -= 1;
  }
  return polynomial.slice(0, Math.max(count, 1));
}

/** More steps than this are never taken: halving alone is through in 60. */
const mostSteps = 100;

/** The one crossing between two stations: Newton's steps, and halving wherever one leaves the bracket. */
function crossing(
  curve: Polynomial,
  slope: Polynomial,
  from: number,
  to: number,
): number {
  const rises = plainValue(curve, from) < 0;
  let [low, high] = [from, to];
  let s = (low + high) / 2;
  for (let step = 0; step < mostSteps; step += 1) {
    const value = plainValue(curve, s);
    if (value === 0) return s;
    if (value < 0 === rises) low = s;
    else high = s;
    const newton = s - value / plainValue(slope, s);
    const next = newton > low && newton < high ? newton : (low + high) / 2;
    if (Math.abs(next - s) <= 1e-15 * to) return next;
    s = next;
  }
  return s;
}

/** The value as arithmetic gives it: noise may not be dropped here, for it decides where a root is. */
function plainValue(polynomial: Polynomial, s: number): number {
  return polynomial.reduceRight((value, coefficient) => value * s + coefficient, 0);
}
