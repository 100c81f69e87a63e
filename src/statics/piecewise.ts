import { evaluatePolynomial, sizeOfPolynomial } from './piecewise/polynomial.ts';
import { stationTolerance } from './tolerances.ts';

/**
 * Exact piecewise polynomials along a beam.
 *
 *      value
 *        │   ┌──╮            each piece holds the coefficients of powers of (x − start):
 *        │   │   ╲           c₀ + c₁ s + c₂ s² + c₃ s³ …,  s = x − start, so a jump is
 *        └───┴────┴───── x   simply two pieces that do not meet, and both sides are kept.
 *
 * Pieces follow one another without gaps, none of zero length.
 */
export interface Piece {
  /** Where the piece begins and ends, in metres. */
  readonly start: number;
  readonly end: number;
  /** Coefficients of ascending powers of (x − start). */
  readonly coefficients: readonly number[];
}

/** A function along the beam, from its first point to its last. */
export interface Piecewise {
  readonly pieces: readonly Piece[];
}

/** A greatest or least value, and the leftmost station that has it (one-sided values at jumps count). */
export interface Extreme {
  readonly value: number;
  readonly x: number;
}

/** The side from which a station is approached. */
export type Side = 'left' | 'right';

/**
 * The value at a station, coming from its left or its right; at the beam's own ends both sides
 * give the value just inside. Exactly 0 where only rounding is left of terms that cancel.
 *
 * @throws RangeError where the station is not on the beam.
 */
export function valueAt(f: Piecewise, x: number, side: Side): number {
  const piece = pieceUnder(f, x, side);
  const margin = marginOf(f);
  if (piece === undefined || x < piece.start - margin || x > piece.end + margin) {
    throw new RangeError(`station ${x} is not on the beam`);
  }
  const s = Math.min(Math.max(x, piece.start), piece.end) - piece.start;
  return evaluatePolynomial(piece.coefficients, s);
}

function pieceUnder(f: Piecewise, x: number, side: Side): Piece | undefined {
  const margin = marginOf(f);
  // A station within the margin of a breakpoint stands on it.
  const isUnder = (piece: Piece): boolean =>
    side === 'left' ? x <= piece.end + margin : x < piece.end - margin;
  return f.pieces.find(isUnder) ?? f.pieces.at(-1);
}

function marginOf({ pieces }: Piecewise): number {
  return stationTolerance * ((pieces.at(-1)?.end ?? 0) - (pieces[0]?.start ?? 0));
}

/** Every station at which a piece begins or ends, from left to right. */
export function breakpointsOf({ pieces }: Piecewise): readonly number[] {
  const first = pieces[0];
  return first === undefined ? [] : [first.start, ...pieces.map((piece) => piece.end)];
}

/** An upper bound of the size of the values: what noise and ties are judged against. */
export function sizeOf({ pieces }: Piecewise): number {
  return Math.max(
    0,
    ...pieces.map(({ coefficients, start, end }) =>
      sizeOfPolynomial(coefficients, end - start),
    ),
  );
}

/** A station where a function leaps, with the value on either side of it. */
export interface Jump {
  readonly x: number;
  readonly left: number;
  readonly right: number;
}

/** The jumps between pieces, from left to right; those that are only noise beside `size` left out. */
export function jumpsOf(f: Piecewise, size: number = sizeOf(f)): readonly Jump[] {
  return f.pieces.slice(1).flatMap((piece, index) => {
    const x = piece.start;
    const before = f.pieces[index];
    const left =
      before === undefined
        ? 0
        : evaluatePolynomial(before.coefficients, before.end - before.start);
    const right = evaluatePolynomial(piece.coefficients, 0);
    return Math.abs(right - left) <= stationTolerance * size
      ? []
      : [{ x, left, right }];
  });
}
