import {
  call,
  given,
  name,
  power,
  product,
  quotient,
  sum,
  type Expression,
  type StatementLine,
} from '../../equation/index.ts';
import { writtenSymbol } from './written-symbol.ts';
import type { Written, WrittenLine } from './written.ts';

/** A line as it was written, to be typeset: its links with equals signs between. */
export function asEquation({
  links,
  direction,
}: WrittenLine): StatementLine | undefined {
  const [first, ...others] = links.map(asExpression);
  if (first === undefined) return undefined;
  const margin = direction === undefined ? {} : { margin: direction };
  if (others.length === 0)
    return { left: first, chain: [], recheck: 'none', ...margin };
  return {
    left: first,
    chain: others.map((of) => ({ sign: '=', of })),
    recheck: 'none',
    ...margin,
  };
}

/** An expression as it was written. */
export function asExpression(of: Written): Expression {
  switch (of.kind) {
    case 'number':
      return given(of.quantity);
    case 'name':
      return name(writtenSymbol(of.name));
    case 'sum':
      return sum(
        ...of.terms.map(({ sign, of: term }) => ({ sign, of: asExpression(term) })),
      );
    case 'product':
      return product(...of.factors.map(asExpression));
    case 'quotient':
      return quotient(asExpression(of.over), asExpression(of.under));
    case 'power':
      return power(asExpression(of.base), of.exponent);
    case 'call':
      return call(of.of, asExpression(of.argument));
  }
}
