import type { Print, Quantity, Unit } from '../units/index.ts';

/** A number with its unit, carried exactly and printed rounded. */
export interface Figure {
  readonly kind: 'figure';
  readonly quantity: Quantity;
  /** The unit that it is printed in; a unit without factors for a pure number. */
  readonly unit: Unit;
  readonly print: Print;
  /**
   * Symbols of unit factors that are struck through because they cancel in the product or quotient
   * around, one entry a power: `['ft']` strikes one of the two feet of lb/ft².
   */
  readonly cancelled?: readonly string[];
}

/** A symbol: an italic (or upright) letter with an upright or italic subscript, `R` with `C`, `x̄` with `2`. */
export interface Symbol {
  /** One Latin or Greek letter, or an upright word. */
  readonly letter: string;
  readonly subscript?: string;
  /** Draws a bar over the letter (centroids). */
  readonly bar?: boolean;
  readonly upright?: boolean;
  /** How often it is differentiated with respect to x, set as primes: v″. */
  readonly primes?: 1 | 2 | 3;
  /** What it stands for, for the notation list and for speech: `vertical reaction at C`. */
  readonly meaning: string;
}

/** A symbol standing in an equation. */
export interface Name {
  readonly kind: 'name';
  readonly symbol: Symbol;
}

/** A sum; each term with its sign, so that no minus is hidden inside a term. */
export interface Sum {
  readonly kind: 'sum';
  readonly terms: readonly {
    readonly sign: 1 | -1;
    readonly of: Expression;
    /** Underlined with its sign: the term that a reader is to look at. */
    readonly isSetOff?: boolean;
  }[];
}

/** A product, factors in print order: the first bare, later figures in parentheses. */
export interface Product {
  readonly kind: 'product';
  readonly factors: readonly Expression[];
}

/** A quotient, set as a fraction. */
export interface Quotient {
  readonly kind: 'quotient';
  readonly over: Expression;
  readonly under: Expression;
}

/** A power with a whole or fractional exponent. */
export interface Power {
  readonly kind: 'power';
  readonly base: Expression;
  readonly exponent: number;
}

/**
 * A singularity function ⟨x − a⟩ⁿ in Macaulay's brackets: 0 left of a, (x − a)ⁿ right of it; the power 0 is
 * the unit step, which counts just right of a (W. H. Macaulay, Messenger of Mathematics 48, 1919).
 */
export interface Bracket {
  readonly kind: 'bracket';
  /** What stands in the brackets, x − a. */
  readonly of: Expression;
  /** A whole number from 0. */
  readonly exponent: number;
}

/** A function of one argument. Angles in degrees print as such. */
export interface Call {
  readonly kind: 'call';
  readonly of: 'sin' | 'cos' | 'tan' | 'sqrt' | 'abs';
  readonly argument: Expression;
}

/** A symbol as a function of a variable, `M(x)`. */
export interface FunctionOf {
  readonly kind: 'function-of';
  readonly symbol: Symbol;
  readonly argument: Expression;
}

/** An integral of a function of x between two stations (areas of diagrams). */
export interface Integral {
  readonly kind: 'integral';
  readonly from: Expression;
  readonly to: Expression;
  readonly of: Expression;
  readonly variable: Symbol;
}

/** The sum of all moments about a point or all forces along a direction, with the sense that counts positive. */
export interface SumOf {
  readonly kind: 'sum-of';
  readonly what:
    | {
        readonly kind: 'moments';
        readonly about: string;
        readonly positive: 'counterclockwise' | 'clockwise';
      }
    | { readonly kind: 'forces'; readonly positive: 'right' | 'left' | 'up' | 'down' };
}

/** An expression, written once and then read: as TeX, as speech, as a value, as a line to recheck. Plain read-only data. */
export type Expression =
  | Figure
  | Name
  | Sum
  | Product
  | Quotient
  | Power
  | Bracket
  | Call
  | FunctionOf
  | Integral
  | SumOf;
