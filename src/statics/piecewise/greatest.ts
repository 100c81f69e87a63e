import type { Piece, Piecewise } from '../piecewise.ts';
import { tieTolerance } from '../tolerances.ts';
import { combine, mergeBreakpoints, polynomialFrom } from './combine.ts';
import { evaluatePolynomial, rootsOf, sizeOfPolynomial } from './polynomial.ts';

/** At every station the greatest of some functions over one beam: exact, with a breakpoint wherever another takes over. */
export function greatestOf(functions: readonly Piecewise[]): Piecewise {
  const [first, ...rest] = functions;
  return rest.reduce(greaterOf, first ?? { pieces: [] });
}

/** At every station the least of some functions over one beam. */
export function leastOf(functions: readonly Piecewise[]): Piecewise {
  return turnedOver(greatestOf(functions.map(turnedOver)));
}

function turnedOver(f: Piecewise): Piecewise {
  return combine([{ factor: -1, f }]);
}

function greaterOf(f: Piecewise, g: Piecewise): Piecewise {
  const stations = mergeBreakpoints([f, g]);
  const pieces = stations.slice(1).flatMap((end, index) => {
    const start = stations[index] ?? end;
    return greaterBetween(f, g, [start, end]);
  });
  return { pieces };
}

/** The greater of two over a stretch without breakpoints, cut where they cross. */
function greaterBetween(
  f: Piecewise,
  g: Piecewise,
  [start, end]: readonly [number, number],
): readonly Piece[] {
  const length = end - start;
  const difference = combine([
    {
      factor: 1,
      f: { pieces: [{ start, end, coefficients: polynomialFrom(f, start, end) }] },
    },
    {
      factor: -1,
      f: { pieces: [{ start, end, coefficients: polynomialFrom(g, start, end) }] },
    },
  ]);
  const polynomial = difference.pieces[0]?.coefficients ?? [0];
  const floor = tieTolerance * sizeOfPolynomial(polynomial, length);
  const inside = rootsOf(polynomial, length, floor).filter((s) => s > 0 && s < length);
  const cuts = [start, ...inside.map((s) => start + s), end];
  return cuts.slice(1).map((to, index) => {
    const from = cuts[index] ?? start;
    const isF = evaluatePolynomial(polynomial, (from + to) / 2 - start) >= 0;
    return {
      start: from,
      end: to,
      coefficients: polynomialFrom(isF ? f : g, from, to),
    };
  });
}
