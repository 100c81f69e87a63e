import { countIn, formatQuantity } from '../units/index.ts';
import type { Expression, Figure } from './expression.ts';
import { mapFigures } from './map-expression.ts';

/** No figure prints more significant figures or decimals than this: beyond it a double is noise. */
const mostFigures = 12;

/** The expression with so many more figures on every computed figure that its rounding falsifies; given ones never change. */
export function raiseFigures(expression: Expression, by: number): Expression {
  return mapFigures(expression, (figure) => raised(figure, by));
}

function raised(figure: Figure, by: number): Figure {
  const { print } = figure;
  if (print.kind === 'given' || isExact(figure)) return figure;
  const count = Math.max(print.count, Math.min(mostFigures, print.count + by));
  return { ...figure, print: { ...print, count } };
}

// 6.000 ft for exactly 6 ft gains nothing from another nought.
function isExact({ quantity, unit, print }: Figure): boolean {
  const exact = countIn(quantity, unit);
  const off = Math.abs(formatQuantity(quantity, unit, print).value - exact);
  return off <= 1e-12 * Math.abs(exact);
}
