import type { Grouping, Print, PrintedFigure } from './print.ts';
import { readGiven } from './read-given.ts';
import {
  decimalsFor,
  plainDigits,
  roundDecimal,
  toDecimal,
  type Decimal,
} from './round-decimal.ts';
import { powerText } from './superscript.ts';

/** From here on a number prints with a power of ten. */
const great = 1e6;
/** Below this a number prints with a power of ten. */
const small = 1e-4;
/** Decimals beyond this size do not print in full. */
const longest = 1e15;

/**
 * A number as printed. This file is the only place that rounds: nearest, halves away from zero, judged
 * on the decimal number that the double stands for (2.675 to two decimals is 2.68).
 *
 * Trailing zeros that carry meaning stay (2.400). An exact zero, and minus zero, print `0`; nothing
 * else prints a minus before noughts. Significant figures from 1,000,000 on and under 0.0001 take a power
 * of ten that is a multiple of three (36.9×10⁶); decimals stay plain, as a table column needs. Thousands
 * are set apart from 10,000 on, in print only: data carry plain numbers. A given text prints as it is.
 *
 * NaN, infinities and a given text that is no number are a RangeError: a programmer's mistake.
 */
export function formatNumber(
  value: number,
  print: Print,
  grouping: Grouping = 'none',
): PrintedFigure {
  if (print.kind === 'given') return readGiven(print.text, print.compound);
  const exact = toDecimal(value);
  if (exact.digits === '') return zeroFigure;
  if (print.kind === 'decimals') {
    if (Math.abs(value) >= longest) return withPower(exact, 6, grouping);
    return atPower(exact, print.count, { exponent: 0, grouping });
  }
  const figures = Math.max(1, print.count);
  const decimals = decimalsFor(exact, figures);
  const rounded = magnitudeOf(roundDecimal(exact, decimals));
  if (rounded >= great || rounded < small) return withPower(exact, figures, grouping);
  return atPower(exact, decimals, { exponent: 0, grouping });
}

const zeroFigure: PrintedFigure = {
  text: '0',
  negative: false,
  mantissa: '0',
  exponent: 0,
  compound: false,
  value: 0,
  lastPlace: 0,
};

// The power of ten that leaves one to three digits before the point, as engineers print it.
function withPower(exact: Decimal, figures: number, grouping: Grouping): PrintedFigure {
  const rounded = roundDecimal(exact, decimalsFor(exact, figures));
  const exponent = Math.floor((rounded.point - 1) / 3) * 3;
  const shifted = { ...exact, point: exact.point - exponent };
  return atPower(shifted, decimalsFor(shifted, figures), { exponent, grouping });
}

function atPower(
  mantissa: Decimal,
  decimals: number,
  how: { readonly exponent: number; readonly grouping: Grouping },
): PrintedFigure {
  const rounded = roundDecimal(mantissa, decimals);
  const plain = plainDigits(rounded, decimals);
  const shown = groupThousands(plain, how.grouping);
  const sign = rounded.negative ? '−' : '';
  return {
    text: `${sign}${shown}${powerText(how.exponent)}`,
    negative: rounded.negative,
    mantissa: shown,
    exponent: how.exponent,
    compound: false,
    value: Number(`${rounded.negative ? '-' : ''}${plain}e${how.exponent}`),
    lastPlace: Number(`1e${how.exponent - decimals}`),
  };
}

function magnitudeOf(of: Decimal): number {
  return of.digits === '' ? 0 : Number(`0.${of.digits}e${of.point}`);
}

function groupThousands(digits: string, grouping: Grouping): string {
  const [whole = '', fraction] = digits.split('.');
  if (grouping === 'none' || whole.length < 5) return digits;
  const separator = grouping === 'comma' ? ',' : '\u202f';
  const grouped = whole.replace(/\B(?=(\d{3})+$)/g, separator);
  return fraction === undefined ? grouped : `${grouped}.${fraction}`;
}
