import {
  bracket,
  minus,
  name,
  number,
  plus,
  power,
  product,
  quotient,
  sum,
  type Expression,
  type Term,
} from '../../equation/index.ts';
import type { CaseContext } from '../case-context.ts';
import { tidy } from '../printing.ts';
import { stationSymbol } from '../symbols.ts';
import { type Times } from './bending-units.ts';
import type { BendingTerm } from './bending.ts';
import { factorial } from './integrate-bending.ts';

/** `x − 6 ft`, or `x` alone where the distance counts from where the stations do. */
export function distanceFrom({ printing }: CaseContext, at: number): Expression {
  if (at === 0) return name(stationSymbol);
  const figure = tidy(printing, 'length', Math.abs(at));
  return sum(plus(name(stationSymbol)), at > 0 ? minus(figure) : plus(figure));
}

/** The terms of E I v″ integrated so many times, as functions of x: in letters or in figures. */
export function termsOfX(
  context: CaseContext,
  terms: readonly BendingTerm[],
  { times, as }: { readonly times: Times; readonly as: 'letters' | 'figures' },
): readonly Term[] {
  return terms.map(({ at, order, size, symbolic, numeric }) => {
    const of = bracket(distanceFrom(context, at), order + times);
    const sign = as === 'letters' ? symbolic.sign : size < 0 ? -1 : 1;
    return {
      sign,
      of: overFactorial(as === 'letters' ? symbolic.of : numeric, order + times, of),
    };
  });
}

/** The terms that have begun before a station, worked there. */
export function termsAtStation(
  context: CaseContext,
  terms: readonly BendingTerm[],
  { x, times }: { readonly x: number; readonly times: Times },
): readonly Term[] {
  return terms
    .filter(({ at }) => at < x)
    .map(({ at, order, size, numeric }) => ({
      sign: size < 0 ? -1 : 1,
      of: overFactorial(
        numeric,
        order + times,
        raised(reach(context, x, at), order + times),
      ),
    }));
}

/** A coefficient over n! times a power. */
function overFactorial(
  coefficient: Expression,
  n: number,
  of: Expression | undefined,
): Expression {
  const divisor = factorial(n);
  const head = divisor === 1 ? coefficient : quotient(coefficient, number(divisor));
  return of === undefined ? head : product(head, of);
}

function raised(of: Expression, exponent: number): Expression | undefined {
  if (exponent === 0) return undefined;
  return exponent === 1 ? of : power(of, exponent);
}

/**
 * A distance along the member: one figure where the stations at both ends print exactly, else their
 * difference, so that it is worked from the stations as they are printed.
 */
export function reach({ printing }: CaseContext, x: number, from: number): Expression {
  const [end, start] = [tidy(printing, 'length', x), tidy(printing, 'length', from)];
  if (from === 0) return end;
  if (end.print.kind === 'given' && start.print.kind === 'given')
    return tidy(printing, 'length', x - from);
  return sum(end, {
    sign: from > 0 ? -1 : 1,
    of: tidy(printing, 'length', Math.abs(from)),
  });
}
