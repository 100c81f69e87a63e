import type { Expression, Symbol } from './expression.ts';
import { partsOf } from './map-expression.ts';
import type { Statement } from './statement.ts';
import { symbolKey } from './symbol-key.ts';

/** Every symbol of some statements, each once, in order of appearance: what a notation list has to explain. */
export function collectSymbols(statements: readonly Statement[]): readonly Symbol[] {
  const found = new Map<string, Symbol>();
  const note = (symbol: Symbol): void => {
    const key = symbolKey(symbol);
    if (!found.has(key)) found.set(key, symbol);
  };
  for (const { lines } of statements) {
    for (const line of lines) {
      if (line.left !== undefined) symbolsOf(line.left).forEach(note);
      for (const { of } of line.chain) symbolsOf(of).forEach(note);
    }
  }
  return [...found.values()];
}

/** The symbols of one expression in order of appearance, repeats included; the letters of headings are not among them. */
export function symbolsOf(expression: Expression): readonly Symbol[] {
  const inside = partsOf(expression).flatMap(symbolsOf);
  if (expression.kind === 'name' || expression.kind === 'function-of') {
    return [expression.symbol, ...inside];
  }
  return expression.kind === 'integral' ? [...inside, expression.variable] : inside;
}
