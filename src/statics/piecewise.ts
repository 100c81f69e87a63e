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
