import { name, type Expression, type Symbol } from '../../equation/index.ts';
import type { Label } from '../../figure/index.ts';

/** Plain words beside a part of a figure. */
export function textLabel(text: string): Label {
  return { kind: 'text', text };
}

/** A symbol alone. */
export function symbolLabel(symbol: Symbol): Label {
  return { kind: 'expression', expression: name(symbol) };
}

/** A symbol and what it is worth. */
export function equalsLabel(symbol: Symbol, of: Expression): Label {
  return { kind: 'line', line: { left: name(symbol), chain: [{ sign: '=', of }] } };
}
