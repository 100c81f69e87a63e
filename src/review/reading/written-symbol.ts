import type { Symbol } from '../../equation/index.ts';

/** A symbol as the worker writes it: `RA`, `R_A` as R with A below. */
export function writtenSymbol(text: string): Symbol {
  const [, letter = text, subscript] =
    /^(\p{L})_?([\p{L}\p{Nd}/₀-₉]+)$/u.exec(text) ?? [];
  return {
    letter,
    ...(subscript === undefined ? {} : { subscript }),
    meaning: text,
  };
}
