/**
 * Numbers that know what they measure.
 *
 * A quantity is a number of SI units (N, m, K, rad) with its dimension. It enters by `parseQuantity`,
 * which reads what people write and answers with a quantity or with what is wrong and where; it leaves by
 * `formatQuantity`, the only place that rounds. Units are products of factors (kip·ft, in⁴), so that a
 * reader can see them cancel; one table says what each is worth and who laid that down.
 *
 * @module
 */
export {
  dimension,
  divideDimensions,
  multiplyDimensions,
  powerOfDimension,
  sameButAngle,
  sameDimension,
} from './dimension.ts';
export type { Dimension } from './dimension.ts';
export { dimensions, nameDimension, unitsThatFit } from './dimension-names.ts';
export type { DimensionName } from './dimension-names.ts';
export type { Unit, UnitFactor } from './unit.ts';
export { unitTable } from './unit-table.ts';
export type { UnitEntry, UnitSystem } from './unit-entry.ts';
export {
  divideUnits,
  expandUnit,
  multiplyUnits,
  powerOfUnit,
  pureUnit,
  sameUnit,
  unitOf,
} from './unit-algebra.ts';
export { superscript } from './superscript.ts';
export { unitText } from './unit-text.ts';
export { displayUnit } from './display-unit.ts';
export type { Display } from './display-unit.ts';
export { countIn, quantity } from './quantity.ts';
export type { GivenQuantity, Quantity } from './quantity.ts';
export type { Grouping, Print, PrintedFigure } from './print.ts';
export { formatNumber } from './format-number.ts';
export { formatQuantity, quantityText } from './format-quantity.ts';
export { alignDecimals, columnDecimals } from './align-decimals.ts';
export { formatFeetInches } from './format-feet-inches.ts';
export { formatRatio } from './format-ratio.ts';
export { parseQuantity } from './parse-quantity.ts';
export type { ParsedQuantity } from './parse-quantity.ts';
export type { QuantityProblem, QuantityProblemKind } from './quantity-problem.ts';
export { parseUnit } from './parse-unit.ts';
export type { ParsedUnit, UnitFault } from './parse-unit.ts';
