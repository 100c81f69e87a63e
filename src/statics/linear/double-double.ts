/**
 * A number of about 32 digits, held as the sum of two floating-point numbers of which the second
 * is the rounding of the first. Stiffnesses of a beam with very short stretches or very stiff
 * springs cancel so far that 16 digits leave nothing; with 32 nothing of a result is lost.
 * — Dekker, Numerische Mathematik 18 (1971); Knuth, The Art of Computer Programming 2, section
 * 4.2.2 (both from memory).
 */
export type DoubleDouble = readonly [high: number, low: number];

/** Nothing at all. */
export const zero: DoubleDouble = [0, 0];

/** A plain number, exactly. */
export function exact(value: number): DoubleDouble {
  return [value, 0];
}

/** The nearest plain number; never minus zero. */
export function rounded([high, low]: DoubleDouble): number {
  return high + low + 0;
}

/** The sum of two plain numbers, exactly. */
export function exactSum(a: number, b: number): DoubleDouble {
  const sum = a + b;
  const part = sum - a;
  return [sum, a - (sum - part) + (b - part)];
}

/** 2²⁷ + 1 parts 53 bits into two halves whose products are exact. */
const splitter = 134_217_729;

/** The product of two plain numbers, exactly. */
export function exactProduct(a: number, b: number): DoubleDouble {
  const product = a * b;
  const bigA = splitter * a;
  const highA = bigA - (bigA - a);
  const lowA = a - highA;
  const bigB = splitter * b;
  const highB = bigB - (bigB - b);
  const lowB = b - highB;
  const rest = highA * highB - product + highA * lowB + lowA * highB + lowA * lowB;
  return [product, rest];
}

/** High and low part made to fit: the low one no more than the rounding of the high one. */
function fitted(high: number, low: number): DoubleDouble {
  const sum = high + low;
  return [sum, low - (sum - high)];
}

/** a + b. */
export function add(a: DoubleDouble, b: DoubleDouble): DoubleDouble {
  const [high, carry] = exactSum(a[0], b[0]);
  const [low, rest] = exactSum(a[1], b[1]);
  const [sum, small] = fitted(high, carry + low);
  return fitted(sum, small + rest);
}

/** −a. */
export function negative(a: DoubleDouble): DoubleDouble {
  return [-a[0], -a[1]];
}

/** a − b. */
export function subtract(a: DoubleDouble, b: DoubleDouble): DoubleDouble {
  return add(a, negative(b));
}

/** a · b. */
export function multiply(a: DoubleDouble, b: DoubleDouble): DoubleDouble {
  const [product, rest] = exactProduct(a[0], b[0]);
  return fitted(product, rest + (a[0] * b[1] + a[1] * b[0]));
}

/** a / b, by long division in three steps. */
export function divide(a: DoubleDouble, b: DoubleDouble): DoubleDouble {
  const first = a[0] / b[0];
  const rest = subtract(a, multiply(b, [first, 0]));
  const second = rest[0] / b[0];
  const last = subtract(rest, multiply(b, [second, 0]));
  return add(fitted(first, second), [last[0] / b[0], 0]);
}

/** a plain number times a. */
export function times(factor: number, a: DoubleDouble): DoubleDouble {
  const [product, rest] = exactProduct(factor, a[0]);
  return fitted(product, rest + factor * a[1]);
}

/** The sum of a list; zero of none. */
export function sumOf(terms: readonly DoubleDouble[]): DoubleDouble {
  return terms.reduce(add, zero);
}

/** An entry of a list; zero where it has none. */
export function entryAt(
  values: readonly DoubleDouble[] | undefined,
  index: number,
): DoubleDouble {
  return values?.[index] ?? zero;
}
