import type { Piecewise } from '../piecewise.ts';
import { antiderivative, derivative, evaluatePolynomial, trim } from './polynomial.ts';

/** The slope of every piece; a jump has none and leaves no trace. */
export function differentiate(f: Piecewise): Piecewise {
  return {
    pieces: f.pieces.map((piece) => ({
      ...piece,
      coefficients: trim(derivative(piece.coefficients)),
    })),
  };
}

/** The integral from the left end, continuous across every breakpoint, starting from `constant`. */
export function integrate(f: Piecewise, constant: number = 0): Piecewise {
  let value = constant;
  const pieces = f.pieces.map((piece) => {
    const coefficients = trim(antiderivative(piece.coefficients, value));
    value = evaluatePolynomial(coefficients, piece.end - piece.start);
    return { ...piece, coefficients };
  });
  return { pieces };
}

/** The net area under a function between two stations, what lies below zero counting negative. */
export function areaUnder(f: Piecewise, from: number, to: number): number {
  return f.pieces.reduce((area, { start, end, coefficients }) => {
    const low = Math.max(from, start);
    const high = Math.min(to, end);
    if (high <= low) return area;
    const integral = antiderivative(coefficients, 0);
    return (
      area +
      evaluatePolynomial(integral, high - start) -
      evaluatePolynomial(integral, low - start)
    );
  }, 0);
}
