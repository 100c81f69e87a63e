import { trim, type Polynomial } from '../piecewise/polynomial.ts';
import { dropNoise } from '../tolerances.ts';

/** The straight line through the values at s = 0 and s = length. */
export function lineThrough(
  [first, last]: readonly [first: number, last: number],
  length: number,
): Polynomial {
  const size = Math.abs(first) + Math.abs(last);
  return trim([first, dropNoise(last - first, size) / length]);
}

/**
 * The cubic through the values at s = 0, a third, two thirds and the whole of a length, by Newton's
 * divided differences; terms that are only rounding are none.
 *
 * @throws RangeError where there are not four values.
 */
export function cubicThrough(values: readonly number[], length: number): Polynomial {
  const [a, b, c, d] = values;
  if (a === undefined || b === undefined || c === undefined || d === undefined)
    throw new RangeError('a cubic takes four values');
  const size = Math.abs(a) + Math.abs(b) + Math.abs(c) + Math.abs(d);
  // With u = 3 s / length the values stand at u = 0, 1, 2, 3.
  const first = b - a;
  const second = (c - 2 * b + a) / 2;
  const third = (d - 3 * c + 3 * b - a) / 6;
  const powers = [a, first - second + 2 * third, second - 3 * third, third];
  return trim(
    powers.map((power, index) =>
      index === 0 ? power : dropNoise(power, size) * (3 / length) ** index,
    ),
  );
}
