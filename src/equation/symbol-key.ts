import type { Symbol } from './expression.ts';

/** What tells one symbol from another: its letter, bar, primes and subscript. What it means does not count. */
export function symbolKey(symbol: Symbol): string {
  const bar = symbol.bar === true ? '\u0304' : '';
  const subscript = symbol.subscript === undefined ? '' : `_${symbol.subscript}`;
  return `${symbol.letter}${bar}${'′'.repeat(symbol.primes ?? 0)}${subscript}`;
}
