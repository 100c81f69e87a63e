import { pureUnit } from '../units/index.ts';
import type { SymbolValues } from './evaluate.ts';
import type { Expression, Integral } from './expression.ts';
import { partsOf } from './map-expression.ts';
import { symbolKey } from './symbol-key.ts';

/** True where an expression has a value: no heading in it, and no symbol but those that are known. */
export function isNumeric(expression: Expression, values: SymbolValues): boolean {
  switch (expression.kind) {
    case 'sum-of':
      return false;
    case 'name':
    case 'function-of':
      return values.has(symbolKey(expression.symbol));
    case 'integral':
      return isNumericIntegral(expression, values);
    case 'figure':
    case 'sum':
    case 'product':
    case 'quotient':
    case 'power':
    case 'bracket':
    case 'call':
      return partsOf(expression).every((part) => isNumeric(part, values));
  }
}

function isNumericIntegral(
  { from, to, of, variable }: Integral,
  values: SymbolValues,
): boolean {
  const any = { si: 0, dimension: pureUnit.dimension };
  const inside = new Map([...values, [symbolKey(variable), any]]);
  return [from, to].every((end) => isNumeric(end, values)) && isNumeric(of, inside);
}
