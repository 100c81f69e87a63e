import { exactly, figure, given, number, type Figure } from '../equation/index.ts';
import type { Project } from '../project/index.ts';
import {
  countIn,
  displayUnit,
  formatFeetInches,
  formatNumber,
  parseQuantity,
  quantity,
  quantityText,
  sameUnit,
  unitText,
  type Display,
  type GivenQuantity,
  type Unit,
} from '../units/index.ts';

/** How one project prints: its system of units and its significant figures. */
export interface Printing {
  readonly system: 'us' | 'si';
  readonly figures: number;
  /** How dimensions print that are read off and not worked with; decimal where absent. */
  readonly lengths?: 'decimal' | 'feet-inches';
}

/** How a project prints. */
export function printingOf({ definition }: Project): Printing {
  return {
    system: definition.units,
    figures: definition.figures.value,
    lengths: definition.lengths.value,
  };
}

/** A computed value in the project's unit, rounded to the project's figures when printed. */
export function value(printing: Printing, what: Display, si: number): Figure {
  const unit = displayUnit(printing.system, what);
  if (si === 0) return exactly(0, unit);
  return figure(quantity(si / unit.inSi, unit), unit, {
    kind: 'figures',
    count: printing.figures,
  });
}

/**
 * A length or angle that follows from given ones by adding and subtracting: printed with its own
 * few digits where these say it exactly (6 ft, 12.5 ft), else rounded to the project's figures.
 */
export function tidy(printing: Printing, what: Display, si: number): Figure {
  const unit = displayUnit(printing.system, what);
  const count = si / unit.inSi;
  const shortest = Number(count.toPrecision(printing.figures));
  const isExact = Math.abs(count - shortest) <= 1e-9 * Math.abs(count);
  if (!isExact) return value(printing, what, si);
  return { ...exactly(shortest, unit), quantity: quantity(count, unit) };
}

/** A given quantity as the file gives it, whatever its unit. */
export function asGiven(from: GivenQuantity): Figure {
  return given(from);
}

/** True where a given quantity already stands in the project's unit, as a plain number. */
export function isInProjectUnit(
  printing: Printing,
  what: Display,
  from: GivenQuantity,
): boolean {
  return !from.compound && sameUnit(from.unit, displayUnit(printing.system, what));
}

/** A given quantity in the project's unit: as given where it stands in it, else converted and tidied. */
export function inProjectUnit(
  printing: Printing,
  what: Display,
  from: GivenQuantity,
): Figure {
  return isInProjectUnit(printing, what, from)
    ? given(from)
    : tidy(printing, what, from.si);
}

/** A value as plain text with its unit, for tables, labels and alternate texts. */
export function valueText(printing: Printing, what: Display, si: number): string {
  const shown = value(printing, what, si);
  return quantityText(shown.quantity, shown.unit, shown.print);
}

/** A length as plain text, tidied. */
export function lengthText(printing: Printing, si: number): string {
  const shown = tidy(printing, 'length', si);
  return quantityText(shown.quantity, shown.unit, shown.print);
}

/** A length that is read off, not worked with: in feet and inches where the project asks for them and they tell it. */
export function dimension(printing: Printing, si: number): Figure {
  const shown = tidy(printing, 'length', si);
  if (printing.system !== 'us' || printing.lengths !== 'feet-inches') return shown;
  const { text, value: feet } = formatFeetInches(shown.quantity);
  if (Number.isInteger(feet)) return shown;
  // A station that falls between two sixteenths keeps its decimals rather than move.
  if (Math.abs(feet - countOf(shown)) > 1e-6 * Math.max(1, Math.abs(feet)))
    return shown;
  return { ...shown, print: { kind: 'given', text, compound: true } };
}

/** The same as plain text, for dimension lines. */
export function dimensionText(printing: Printing, si: number): string {
  const shown = dimension(printing, si);
  return quantityText(shown.quantity, shown.unit, shown.print);
}

/** The name of the unit in which the project prints something. */
export function unitName(printing: Printing, what: Display): string {
  return unitText(displayUnit(printing.system, what));
}

/** A bare number to the project's figures, for words such as a ratio or a condition number. */
export function numberText(count: number, figures: number): string {
  return formatNumber(count, { kind: 'figures', count: figures }).text;
}

/** A figure's value in its own unit. */
export function countOf(of: Figure): number {
  return countIn(of.quantity, of.unit);
}

/** How many decimals a column needs for its greatest value to show the project's figures: one column, one number of decimals. */
export function decimalsOf(
  printing: Printing,
  what: Display,
  column: readonly number[],
): number {
  const unit: Unit = displayUnit(printing.system, what);
  const largest = Math.max(0, ...column.map((si) => Math.abs(si / unit.inSi)));
  if (largest === 0) return 0;
  // 9.999999999999998 is 10 to everybody but the logarithm.
  const places = Math.floor(Math.log10(largest * (1 + 1e-12)));
  return Math.max(0, printing.figures - 1 - places);
}

/** A cell of a table column in the project's unit, without its unit, so many decimals; an exact 0 as `0`. */
export function cell(
  printing: Printing,
  what: Display,
  si: number,
  decimals: number,
): Figure {
  const unit = displayUnit(printing.system, what);
  const count = si / unit.inSi;
  const rounded = Number(count.toFixed(decimals)) === 0 ? 0 : count;
  const pure = displayUnit(printing.system, 'pure');
  return rounded === 0
    ? exactly(0, pure)
    : figure(quantity(rounded, pure), pure, { kind: 'decimals', count: decimals });
}

/** A share or a condition number by its powers of ten, 1.1×10^−16, to so many figures; an exact 0 as such. */
export function powerFigure(share: number, figures: number = 2): Figure {
  const written = parseQuantity(share.toExponential(figures - 1)).quantity;
  return share === 0 || written === undefined ? number(0) : given(written);
}
