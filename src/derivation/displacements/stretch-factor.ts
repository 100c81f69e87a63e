import {
  name,
  product,
  type Expression,
  type Figure,
  type Symbol,
} from '../../equation/index.ts';
import { pureUnit } from '../../units/index.ts';
import type { CaseContext } from '../case-context.ts';
import { tidyIn } from './exact-figure.ts';
import { partRightOf, stiffnessParts } from './stiffness-along.ts';

/** What a moment just right of a station is multiplied by: E I at the start over E I there. */
export interface StretchFactor {
  readonly value: number;
  readonly symbol: Symbol;
  readonly figure: Figure;
}

/** The letter of a stretch's ratio. */
export function ratioSymbol(number: number): Symbol {
  return {
    letter: 'n',
    subscript: String(number),
    meaning: `E I at the start over E I of stretch ${number}`,
  };
}

/** The factor just right of a station. */
export function factorAt(
  { structure, printing }: CaseContext,
  x: number,
  EI: number,
): StretchFactor {
  const part = partRightOf(stiffnessParts(structure), x);
  const value = part.EI === EI ? 1 : EI / part.EI;
  return {
    value,
    symbol: ratioSymbol(part.number),
    figure: tidyIn(printing, pureUnit, value),
  };
}

/** A force or moment times the factor, in letters and in figures; a factor of 1 is left out. */
export function factored(
  { value, symbol, figure }: StretchFactor,
  of: {
    readonly symbolic: Expression;
    readonly numeric: Expression;
    readonly size: number;
  },
): {
  readonly symbolic: Expression;
  readonly numeric: Expression;
  readonly size: number;
} {
  if (value === 1) return of;
  return {
    symbolic: product(name(symbol), of.symbolic),
    numeric: product(figure, of.numeric),
    size: value * of.size,
  };
}
