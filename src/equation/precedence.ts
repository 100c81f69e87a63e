import { formatQuantity, pureUnit, sameUnit } from '../units/index.ts';
import type { Expression } from './expression.ts';

/** How tightly the parts of an expression hold together, loosest first. */
export type Binding = 'sum' | 'product' | 'power' | 'atom';

const order: Readonly<Record<Binding, number>> = {
  sum: 0,
  product: 1,
  power: 2,
  atom: 3,
};

const byKind: Readonly<Record<Exclude<Expression['kind'], 'figure'>, Binding>> = {
  sum: 'sum',
  // An integral reaches as far to the right as its differential, a heading as far as its symbol.
  integral: 'product',
  product: 'product',
  quotient: 'product',
  power: 'power',
  bracket: 'power',
  name: 'atom',
  call: 'atom',
  'function-of': 'atom',
  'sum-of': 'atom',
};

/**
 * How tightly an expression holds together: the one table that every reader asks about parentheses.
 * A figure with its unit, or with a power of ten, is a product; one with a minus is a sum.
 */
export function bindingOf(expression: Expression): Binding {
  if (expression.kind !== 'figure') return byKind[expression.kind];
  const { quantity, unit, print } = expression;
  const printed = formatQuantity(quantity, unit, print);
  if (printed.negative) return 'sum';
  return sameUnit(unit, pureUnit) &&
    printed.exponent === 0 &&
    !/[/ ]/.test(printed.mantissa)
    ? 'atom'
    : 'product';
}

/** True where an expression holds together less tightly than its place asks. */
export function isLooser(expression: Expression, than: Binding): boolean {
  return order[bindingOf(expression)] < order[than];
}

/** The factors of a product in print order, products among them opened. */
export function openFactors(factors: readonly Expression[]): readonly Expression[] {
  return factors.flatMap((f) => (f.kind === 'product' ? openFactors(f.factors) : [f]));
}

/**
 * True where a factor stands in parentheses: sums always; after the first factor figures and their
 * powers too, so that no two numbers run into one another: `8.4 kip (6 ft)`.
 */
export function factorInParentheses(
  factor: Expression,
  place: { readonly isFirst: boolean; readonly isLeading: boolean },
): boolean {
  if (factor.kind === 'sum') return true;
  if (factor.kind === 'figure') {
    const isNegative = bindingOf(factor) === 'sum';
    return place.isFirst ? isNegative && !place.isLeading : true;
  }
  return (
    !place.isFirst &&
    factor.kind === 'power' &&
    bindingOf(factor.base) === 'atom' &&
    factor.base.kind === 'figure'
  );
}
