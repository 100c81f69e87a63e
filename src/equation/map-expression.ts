import type { Expression } from './expression.ts';

/** The expression with every direct part replaced by what `change` makes of it; figures, names and headings are themselves. */
export function mapParts(
  expression: Expression,
  change: (part: Expression) => Expression,
): Expression {
  switch (expression.kind) {
    case 'figure':
    case 'name':
    case 'sum-of':
      return expression;
    case 'sum':
      return {
        ...expression,
        terms: expression.terms.map(({ sign, of }) => ({ sign, of: change(of) })),
      };
    case 'product':
      return { ...expression, factors: expression.factors.map(change) };
    case 'quotient':
      return {
        ...expression,
        over: change(expression.over),
        under: change(expression.under),
      };
    case 'power':
      return { ...expression, base: change(expression.base) };
    case 'bracket':
      return { ...expression, of: change(expression.of) };
    case 'call':
    case 'function-of':
      return { ...expression, argument: change(expression.argument) };
    case 'integral':
      return {
        ...expression,
        from: change(expression.from),
        to: change(expression.to),
        of: change(expression.of),
      };
  }
}

/** The direct parts of an expression in reading order; none for figures, names and headings. */
export function partsOf(expression: Expression): readonly Expression[] {
  const parts: Expression[] = [];
  mapParts(expression, (part) => {
    parts.push(part);
    return part;
  });
  return parts;
}

/** Every figure of an expression with what `change` makes of it. */
export function mapFigures(
  expression: Expression,
  change: (figure: Extract<Expression, { kind: 'figure' }>) => Expression,
): Expression {
  if (expression.kind === 'figure') return change(expression);
  return mapParts(expression, (part) => mapFigures(part, change));
}
