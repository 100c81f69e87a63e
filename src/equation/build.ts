import {
  pureUnit,
  quantity,
  type GivenQuantity,
  type Print,
  type Quantity,
  type Unit,
} from '../units/index.ts';
import type {
  Bracket,
  Call,
  Expression,
  Figure,
  FunctionOf,
  Integral,
  Name,
  Power,
  Quotient,
  SumOf,
  Symbol,
} from './expression.ts';

/** A term of a sum with its sign. */
export interface Term {
  readonly sign: 1 | -1;
  readonly of: Expression;
}

/** A computed figure: carried exactly, printed rounded in the unit. */
export function figure(of: Quantity, unit: Unit, print: Print): Figure {
  return { kind: 'figure', quantity: of, unit, print };
}

/** A figure that prints as it was given. */
export function given(of: GivenQuantity): Figure {
  const { si, dimension, text, unit, compound } = of;
  return figure({ si, dimension }, unit, { kind: 'given', text, compound });
}

/** A plain number that prints with all of its own digits: factors, counts, the 12 of 12 in/ft. */
export function number(value: number): Figure {
  return exactly(value, pureUnit);
}

/** So many of a unit, exactly: prints with all of the number's own digits and is never rounded. */
export function exactly(count: number, unit: Unit): Figure {
  return figure(quantity(count, unit), unit, {
    kind: 'given',
    text: String(count),
    compound: false,
  });
}

/** A zero, in a unit (`0 kip`), or bare as closures end (`= 0`). */
export function zero(unit: Unit = pureUnit): Figure {
  return exactly(0, unit);
}

/** A symbol standing in an equation. */
export function name(symbol: Symbol): Name {
  return { kind: 'name', symbol };
}

/** A term that is added. */
export function plus(of: Expression): Term {
  return { sign: 1, of };
}

/** A term that is taken away. */
export function minus(of: Expression): Term {
  return { sign: -1, of };
}

/**
 * A sum of terms; a bare expression is added. Added sums are opened, an added figure or product
 * that begins with a minus becomes a term taken away, and one added term alone is itself.
 */
export function sum(...terms: readonly (Expression | Term)[]): Expression {
  const tidy = terms.flatMap((term) => tidyTerm('sign' in term ? term : plus(term)));
  const [only] = tidy;
  if (tidy.length === 1 && only?.sign === 1) return only.of;
  return { kind: 'sum', terms: tidy };
}

function tidyTerm({ sign, of }: Term): readonly Term[] {
  if (sign === -1) return [{ sign, of }];
  if (of.kind === 'sum') return of.terms;
  const turned = withoutMinus(of);
  return [turned === undefined ? { sign, of } : minus(turned)];
}

// The same without its leading minus, where it has one.
function withoutMinus(of: Expression): Expression | undefined {
  if (of.kind === 'figure') return of.quantity.si < 0 ? oppositeFigure(of) : undefined;
  if (of.kind !== 'product') return undefined;
  const [first, ...others] = of.factors;
  const turned = first === undefined ? undefined : withoutMinus(first);
  return turned === undefined
    ? undefined
    : { kind: 'product', factors: [turned, ...others] };
}

/** The opposite of an expression: every sign of a sum turned, a figure with the other sign, else a sum of one term taken away. */
export function negate(of: Expression): Expression {
  if (of.kind === 'figure') return oppositeFigure(of);
  if (of.kind !== 'sum') return { kind: 'sum', terms: [minus(of)] };
  return sum(...of.terms.map((term) => ({ ...term, sign: opposite(term.sign) })));
}

function opposite(sign: 1 | -1): 1 | -1 {
  return sign === 1 ? -1 : 1;
}

function oppositeFigure(of: Figure): Figure {
  const turned = { ...of.quantity, si: of.quantity.si === 0 ? 0 : -of.quantity.si };
  if (of.print.kind !== 'given' || turned.si === 0) return { ...of, quantity: turned };
  const text = /^[-−]/.test(of.print.text)
    ? of.print.text.slice(1)
    : `−${of.print.text}`;
  return { ...of, quantity: turned, print: { ...of.print, text } };
}

/** A product, factors in print order; products among them are opened, one factor alone is itself. */
export function product(...factors: readonly Expression[]): Expression {
  const open = factors.flatMap((f) => (f.kind === 'product' ? f.factors : [f]));
  const [only] = open;
  return open.length === 1 && only !== undefined
    ? only
    : { kind: 'product', factors: open };
}

/** A quotient, set as a fraction. */
export function quotient(over: Expression, under: Expression): Quotient {
  return { kind: 'quotient', over, under };
}

/** A power. */
export function power(base: Expression, exponent: number): Power {
  return { kind: 'power', base, exponent };
}

/** A singularity function of a difference, `⟨x − 6 ft⟩²`. */
export function bracket(of: Expression, exponent: number): Bracket {
  return { kind: 'bracket', of, exponent };
}

/** A function of one argument. */
export function call(of: Call['of'], argument: Expression): Call {
  return { kind: 'call', of, argument };
}

/** A symbol as a function of a variable or at a station: `M(x)`, `M(6 ft)`. */
export function functionOf(symbol: Symbol, argument: Expression): FunctionOf {
  return { kind: 'function-of', symbol, argument };
}

/** An integral over a variable from one station to another. */
export function integral(
  of: Expression,
  over: {
    readonly variable: Symbol;
    readonly from: Expression;
    readonly to: Expression;
  },
): Integral {
  return { kind: 'integral', of, ...over };
}

/** The heading of a moment sum about a point, with the turn that counts positive. */
export function sumOfMoments(
  about: string,
  positive: 'counterclockwise' | 'clockwise',
): SumOf {
  return { kind: 'sum-of', what: { kind: 'moments', about, positive } };
}

/** The heading of a force sum, with the direction that counts positive. */
export function sumOfForces(positive: 'right' | 'left' | 'up' | 'down'): SumOf {
  return { kind: 'sum-of', what: { kind: 'forces', positive } };
}
