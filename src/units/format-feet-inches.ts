import type { PrintedFigure } from './print.ts';
import type { Quantity } from './quantity.ts';
import { readGiven } from './read-given.ts';
import { roundDecimal, toDecimal, plainDigits } from './round-decimal.ts';

/** Sixteenths of an inch: as fine as anybody sets out a structure. */
const parts = 16;
const inch = 0.0254;

/**
 * A length as feet and inches to the nearest sixteenth of an inch, halves away from zero: `12 ft 6 1/2 in`,
 * `−2 ft 6 in`, `0 ft 0 1/16 in`; an exact zero is `0 ft 0 in`. `value` and `lastPlace` count in feet.
 */
export function formatFeetInches(length: Quantity): PrintedFigure {
  const exact = toDecimal((length.si / inch) * parts);
  const sixteenths = Number(plainDigits(roundDecimal(exact, 0), 0));
  const feet = Math.floor(sixteenths / (12 * parts));
  const left = sixteenths - feet * 12 * parts;
  const inches = Math.floor(left / parts);
  const text = `${feet} ft ${[inches, fraction(left - inches * parts)].join(' ').trim()} in`;
  const sign = exact.negative && sixteenths > 0 ? '−' : '';
  return { ...readGiven(`${sign}${text}`, true), lastPlace: 1 / (12 * parts) };
}

function fraction(sixteenths: number): string {
  if (sixteenths === 0) return '';
  const shared = [8, 4, 2].find((n) => sixteenths % n === 0) ?? 1;
  return `${sixteenths / shared}/${parts / shared}`;
}
