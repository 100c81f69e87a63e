import {
  functionOf,
  minus,
  name,
  product,
  sum,
  type Expression,
  type Symbol,
} from '../../equation/index.ts';
import { segmentsOf, valueAt, type Segment } from '../../statics/index.ts';
import type { CaseContext } from '../case-context.ts';
import { tidy, value } from '../printing.ts';
import { momentSymbol, shearSymbol } from '../symbols.ts';
import { termOf, type BendingTerm, type Worked } from './bending.ts';
import { coefficientUnit } from './bending-units.ts';
import { exactZeroOr } from './exact-figure.ts';
import { partsWithin, stiffnessParts } from './stiffness-along.ts';
import { factorAt, type StretchFactor } from './stretch-factor.ts';

/** Moment and shear just right of a start that is not the member's: all that is left of it, in two terms. */
export function startTerms(context: CaseContext, x: number): readonly BendingTerm[] {
  const { printing, result } = context;
  const station = tidy(printing, 'length', x);
  const one = (
    symbol: Symbol,
    what: 'moment' | 'force',
    order: number,
  ): BendingTerm => {
    const size = valueAt(order === 0 ? result.moment : result.shear, x, 'right');
    return termOf(
      { at: x, order, sense: 1 },
      {
        symbolic: functionOf(symbol, station),
        numeric: value(printing, what, Math.abs(size)),
        size,
      },
    );
  };
  return [one(momentSymbol, 'moment', 0), one(shearSymbol, 'force', 1)];
}

/**
 * Where the stiffness steps, the moment that has come so far is multiplied anew: its value, its slope (the
 * shear) and the load at the step, times the change of the ratio, begin there.
 */
export function stepTerms(
  context: CaseContext,
  worked: Worked,
  EI: number,
): readonly BendingTerm[] {
  const parts = partsWithin(stiffnessParts(context.structure), worked);
  const segments = segmentsOf(context.result);
  return parts.slice(1).flatMap((part, index) => {
    const before = parts[index] ?? part;
    const segment = segments.find(
      ({ from, to }) => from < part.from && to >= part.from,
    );
    if (segment === undefined) return [];
    const step = {
      x: part.from,
      was: factorAt(context, before.from, EI),
      is: factorAt(context, part.from, EI),
    };
    return derivativesAt(segment, part.from).map((size, order) =>
      stepTerm(context, { order, size }, step),
    );
  });
}

/** Moment, shear, and the load's intensity and rate just left of a station, as derivatives of the moment. */
function derivativesAt(
  { from, moment: { local } }: Segment,
  x: number,
): readonly number[] {
  const s = x - from;
  return [0, 1, 2, 3].map((order) =>
    local.reduce((all, coefficient, degree) => {
      if (degree < order) return all;
      const falling = Array.from({ length: order }, (_, i) => degree - i).reduce(
        (product_, factor) => product_ * factor,
        1,
      );
      return all + coefficient * falling * s ** (degree - order);
    }, 0),
  );
}

const letters: readonly Symbol[] = [
  momentSymbol,
  shearSymbol,
  {
    letter: 'M',
    primes: 2,
    meaning: 'second derivative of the bending moment: minus the load',
  },
  {
    letter: 'M',
    primes: 3,
    meaning: 'third derivative of the bending moment: minus the change of the load',
  },
];

function stepTerm(
  { printing }: CaseContext,
  { order, size }: { readonly order: number; readonly size: number },
  {
    x,
    was,
    is,
  }: { readonly x: number; readonly was: StretchFactor; readonly is: StretchFactor },
): BendingTerm {
  const ratio = (of: StretchFactor, part: 'name' | 'figure'): Expression =>
    part === 'name' && of.value !== 1 ? name(of.symbol) : of.figure;
  const change = (part: 'name' | 'figure'): Expression =>
    sum(ratio(is, part), minus(ratio(was, part)));
  const growth = is.value - was.value;
  // In figures the difference stands the way round that makes it positive.
  const figures = growth > 0 ? change('figure') : sum(was.figure, minus(is.figure));
  return termOf(
    { at: x, order, sense: 1 },
    {
      symbolic: product(
        change('name'),
        functionOf(letters[order] ?? momentSymbol, tidy(printing, 'length', x)),
      ),
      numeric: product(
        figures,
        exactZeroOr(printing, coefficientUnit(printing, order), Math.abs(size)),
      ),
      size: growth * size,
    },
  );
}
