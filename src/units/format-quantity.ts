import { formatNumber } from './format-number.ts';
import type { Grouping, Print, PrintedFigure } from './print.ts';
import { countIn, type Quantity } from './quantity.ts';
import { sameButAngle } from './dimension.ts';
import { systemOf } from './unit-algebra.ts';
import { unitText } from './unit-text.ts';
import type { Unit } from './unit.ts';

/**
 * A quantity as printed in a unit; see formatNumber for the rounding. Thousands are set apart as the
 * unit's own system does it: comma for US units, narrow space for SI units and plain numbers (NIST SP 811,
 * 10.5.3). A unit of another dimension is a programmer's mistake, a RangeError.
 */
export function formatQuantity(of: Quantity, unit: Unit, print: Print): PrintedFigure {
  if (!fits(of, unit))
    throw new RangeError(`a quantity does not fit the unit ${unitText(unit, 'data')}`);
  return formatNumber(countIn(of, unit), print, groupingFor(unit));
}

/** A quantity with its unit as plain text: `8.4 kip`, `−36.9×10⁶ mm⁴`, `60°`, `12 ft 6 in`, `0.5`. */
export function quantityText(of: Quantity, unit: Unit, print: Print): string {
  const printed = formatQuantity(of, unit, print);
  return printed.compound ? printed.text : withUnit(printed.text, unit);
}

/** A printed number followed by its unit: a no-break space between, none before a degree sign, `12×10^−6/K` for units that only divide. */
export function withUnit(printedNumber: string, unit: Unit): string {
  const written = unitText(unit);
  if (written === '') return printedNumber;
  if (written.startsWith('1/')) return `${printedNumber}${written.slice(1)}`;
  return written === '°' ? `${printedNumber}°` : `${printedNumber}\u00a0${written}`;
}

/** How thousands are set apart in numbers of a unit. */
export function groupingFor(unit: Unit): Grouping {
  return systemOf(unit) === 'us' ? 'comma' : 'space';
}

// The radian is read as the plain number that it is: a slope w L³/(24 E I) prints in rad.
function fits(of: Quantity, unit: Unit): boolean {
  return sameButAngle(of.dimension, unit.dimension);
}
