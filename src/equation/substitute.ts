import type { Expression } from './expression.ts';
import { mapParts } from './map-expression.ts';
import { symbolKey } from './symbol-key.ts';

/**
 * The expression with symbols replaced by what stands for them, by symbolKey; unknown ones stay, and so
 * does the variable of an integral inside it. Signs are left as they fall, so that `P − R` with R = −3 kip
 * reads P − (−3 kip) and a reader sees where the plus comes from.
 */
export function substitute(
  expression: Expression,
  standIns: ReadonlyMap<string, Expression>,
): Expression {
  if (expression.kind === 'name') {
    return standIns.get(symbolKey(expression.symbol)) ?? expression;
  }
  if (expression.kind !== 'integral') {
    return mapParts(expression, (part) => substitute(part, standIns));
  }
  const bound = symbolKey(expression.variable);
  const inside = new Map([...standIns].filter(([key]) => key !== bound));
  return {
    ...expression,
    from: substitute(expression.from, standIns),
    to: substitute(expression.to, standIns),
    of: substitute(expression.of, inside),
  };
}
