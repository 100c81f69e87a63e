import { functionOf, type Expression, type Symbol } from '../../equation/index.ts';
import type { CaseContext, MemberContext } from '../case-context.ts';
import { tidy } from '../printing.ts';
import { partRightOf, stiffnessParts } from './stiffness-along.ts';

/** Modulus of elasticity. */
export const modulusSymbol: Symbol = { letter: 'E', meaning: 'modulus of elasticity' };

/** Second moment of area, numbered where the stiffness steps. */
export function inertiaSymbol(number?: number): Symbol {
  const meaning = 'second moment of area about the bending axis';
  return number === undefined
    ? { letter: 'I', meaning }
    : {
        letter: 'I',
        subscript: String(number),
        meaning: `${meaning}, stretch ${number}`,
      };
}

/** E and the I at a station, the pair that stands before v″. */
export function rigiditySymbols(
  { structure }: Pick<CaseContext, 'structure'>,
  x: number,
): readonly [Symbol, Symbol] {
  const parts = stiffnessParts(structure);
  const number = parts.length > 1 ? partRightOf(parts, x).number : undefined;
  return [modulusSymbol, inertiaSymbol(number)];
}

/** Deflection, up positive. */
export const deflectionSymbol: Symbol = {
  letter: 'v',
  meaning: 'deflection, up positive',
};

/** Slope of the elastic curve. */
export const slopeSymbol: Symbol = {
  letter: 'θ',
  meaning: 'slope of the elastic curve, counterclockwise positive',
};

/** Curvature of the elastic curve. */
export const curvatureOfCurveSymbol: Symbol = {
  letter: 'v',
  primes: 2,
  meaning: 'second derivative of the deflection: the curvature',
};

/** v at a station, `v(6 ft)`. */
export function deflectionAt(
  { printing }: Pick<MemberContext, 'printing'>,
  x: number,
): Expression {
  return functionOf(deflectionSymbol, tidy(printing, 'length', x));
}
