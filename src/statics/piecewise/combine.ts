import type { Piece, Piecewise } from '../piecewise.ts';
import { dropNoise, stationTolerance } from '../tolerances.ts';
import { shiftOrigin, trim, type Polynomial } from './polynomial.ts';

/** One function of a sum, and what it is multiplied by. */
export interface PiecewiseTerm {
  readonly factor: number;
  readonly f: Piecewise;
}

/**
 * Σ factor · f, over the breakpoints of all of them; coefficients that cancel are exactly 0. All
 * functions must run over the same beam. The sum of no functions has no pieces.
 */
export function combine(terms: readonly PiecewiseTerm[]): Piecewise {
  const stations = mergeBreakpoints(terms.map(({ f }) => f));
  const pieces = stations.slice(1).map((end, index): Piece => {
    const start = stations[index] ?? end;
    const parts = terms.map(({ factor, f }) => ({
      factor,
      polynomial: polynomialFrom(f, start, end),
    }));
    return { start, end, coefficients: sumOf(parts) };
  });
  return { pieces };
}

/** Every breakpoint of some functions over one beam, those that mean one station once. */
export function mergeBreakpoints(functions: readonly Piecewise[]): readonly number[] {
  const all = functions
    .flatMap(({ pieces }) => pieces.flatMap((piece) => [piece.start, piece.end]))
    .sort((a, b) => a - b);
  const margin = stationTolerance * ((all.at(-1) ?? 0) - (all[0] ?? 0));
  return all.filter((x, index) => index === 0 || x - (all[index - 1] ?? x) > margin);
}

/** The polynomial of a function over a stretch without breakpoints, in powers of (x − start). */
export function polynomialFrom(f: Piecewise, start: number, end: number): Polynomial {
  const middle = (start + end) / 2;
  const piece = f.pieces.find((candidate) => middle < candidate.end);
  return piece === undefined
    ? [0]
    : shiftOrigin(piece.coefficients, start - piece.start);
}

function sumOf(
  terms: readonly { readonly factor: number; readonly polynomial: Polynomial }[],
): Polynomial {
  const degree = Math.max(1, ...terms.map(({ polynomial }) => polynomial.length));
  const sum = Array.from({ length: degree }, (_, power) => {
    let value = 0;
    let size = 0;
    for (const { factor, polynomial } of terms) {
      const addend = factor * (polynomial[power] ?? 0);
      value += addend;
      size += Math.abs(addend);
    }
    return dropNoise(value, size) + 0;
  });
  return trim(sum);
}
