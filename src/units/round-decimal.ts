/** A decimal number as its digits: 0.digits × 10^point, without sign; no digits for zero. */
export interface Decimal {
  readonly negative: boolean;
  /** Significant digits, the first not 0. */
  readonly digits: string;
  /** How many digits stand before the decimal point; 0 or less for numbers under 0.1. */
  readonly point: number;
}

/**
 * Digits that count. A double holds 15 to 17, and a chain of sums loses some: at 12 the noise of
 * binary arithmetic is gone (1.005 × 1000 reads 1005, 2.675 reads 2.675), and a value within
 * 1e-12 of a half counts as the half. No sheet prints more.
 */
const soundDigits = 12;

/** A double as the decimal number that an engineer would read in it. NaN and infinities are a RangeError. */
export function toDecimal(value: number): Decimal {
  if (!Number.isFinite(value)) throw new RangeError(`${value} cannot be printed`);
  if (value === 0) return { negative: false, digits: '', point: 0 };
  const [mantissa = '', exponent = ''] = Math.abs(value)
    .toExponential(soundDigits - 1)
    .split('e');
  return {
    negative: value < 0,
    digits: mantissa.replace('.', ''),
    point: Number(exponent) + 1,
  };
}

/**
 * A decimal rounded to `decimals` places after the point (before it where negative): nearest, halves
 * away from zero. What rounds to nothing has no digits and no sign.
 */
export function roundDecimal(of: Decimal, decimals: number): Decimal {
  const keep = of.point + decimals;
  if (of.digits === '' || keep < 0) return { negative: false, digits: '', point: 0 };
  if (keep >= of.digits.length) return of;
  const up = (of.digits[keep] ?? '0') >= '5';
  const kept = (BigInt(`0${of.digits.slice(0, keep)}`) + (up ? 1n : 0n)).toString();
  if (kept === '0') return { negative: false, digits: '', point: 0 };
  return {
    negative: of.negative,
    digits: kept,
    point: of.point + kept.length - keep,
  };
}

/** The decimals that show a number to `figures` significant figures, the carry of rounding included (9.996 to 3 figures is 10.0). */
export function decimalsFor(of: Decimal, figures: number): number {
  const decimals = figures - of.point;
  const rounded = roundDecimal(of, decimals);
  return rounded.point > of.point ? decimals - 1 : decimals;
}

/** The digits of a rounded decimal in plain notation with `decimals` places, without sign: `0.050`, `1235`, `12300`. */
export function plainDigits(of: Decimal, decimals: number): string {
  const places = Math.max(0, decimals);
  const whole = of.digits
    .slice(0, Math.max(0, of.point))
    .padEnd(Math.max(0, of.point), '0');
  const fraction =
    of.digits === ''
      ? ''
      : '0'.repeat(Math.max(0, -of.point)) + of.digits.slice(Math.max(0, of.point));
  const shown = whole === '' ? '0' : whole;
  return places === 0
    ? shown
    : `${shown}.${fraction.padEnd(places, '0').slice(0, places)}`;
}
