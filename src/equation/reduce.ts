import { pureUnit, type Print, type Unit } from '../units/index.ts';
import { figure } from './build.ts';
import { evaluate } from './evaluate.ts';
import type { Expression, Figure } from './expression.ts';
import { resultUnit } from './result-unit.ts';

/**
 * Works an expression of figures alone into one figure: 8.4 kip (6 ft) into 50.4 kip·ft. In the unit that
 * the working gives, or in the one asked for. An expression with a symbol in it is a programmer's mistake,
 * a RangeError.
 */
export function reduce(expression: Expression, print: Print, unit?: Unit): Figure {
  return figure(
    evaluate(expression),
    unit ?? resultUnit(expression) ?? pureUnit,
    print,
  );
}

/** A sum with every term of figures alone worked into one figure, terms with symbols as they are. */
export function reduceTerms(expression: Expression, print: Print): Expression {
  if (expression.kind !== 'sum') {
    return isWorkable(expression) ? reduce(expression, print) : expression;
  }
  const terms = expression.terms.map(({ sign, of }) => ({
    sign,
    of: isWorkable(of) ? reduce(of, print) : of,
  }));
  return { kind: 'sum', terms };
}

// A figure alone is left to print as it is.
function isWorkable(expression: Expression): boolean {
  return expression.kind !== 'figure' && resultUnit(expression) !== undefined;
}
