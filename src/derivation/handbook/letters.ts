import {
  call,
  minus,
  name,
  number,
  power,
  product,
  quotient,
  sum,
  type Expression,
  type Symbol,
} from '../../equation/index.ts';

/** A factor or a term of a formula: an expression, or a plain number. */
export type Part = Expression | number;

const asExpression = (part: Part): Expression =>
  typeof part === 'number' ? number(part) : part;

/** The product of factors in print order. */
export function mul(...factors: readonly Part[]): Expression {
  return product(...factors.map(asExpression));
}

/** A fraction. */
export function div(over: Part, under: Part): Expression {
  return quotient(asExpression(over), asExpression(under));
}

/** A power. */
export function pow(base: Expression, exponent: number): Expression {
  return power(base, exponent);
}

/** A sum. */
export function add(...terms: readonly Part[]): Expression {
  return sum(...terms.map(asExpression));
}

/** A first term less all that follow. */
export function sub(first: Part, ...rest: readonly Part[]): Expression {
  return sum(asExpression(first), ...rest.map((part) => minus(asExpression(part))));
}

/** The same with a minus in front. */
export function neg(of: Expression): Expression {
  return { kind: 'sum', terms: [minus(of)] };
}

/** A square root. */
export function root(of: Part): Expression {
  return call('sqrt', asExpression(of));
}

const letter = (of: string, meaning: string, subscript?: string): Symbol => ({
  letter: of,
  ...(subscript === undefined ? {} : { subscript }),
  meaning,
});

const place = 'distance that a handbook formula counts with';

/** A letter that a case gives a value to. */
export type Letter =
  | 'w'
  | 'w1'
  | 'w2'
  | 'P'
  | 'P1'
  | 'P2'
  | 'C'
  | 'δ'
  | 'L'
  | 'L1'
  | 'L2'
  | 'a'
  | 'b'
  | 'c'
  | 'E'
  | 'I';

/**
 * The letters of the formulas. Loads, reactions and moments of the supports stand in for those of the
 * member, which take their place where a formula is printed; lengths keep theirs.
 */
export const symbols: Readonly<Record<Letter, Symbol>> = {
  /** Intensity of a distributed load; `w1` and `w2` at its two ends. */
  w: letter('w', 'intensity of distributed load'),
  w1: letter('w', 'intensity at one end of a distributed load', '1'),
  w2: letter('w', 'intensity at the other end of a distributed load', '2'),
  P: letter('P', 'point load'),
  P1: letter('P', 'point load', '1'),
  P2: letter('P', 'point load', '2'),
  C: letter('C', 'couple'),
  δ: letter('δ', 'settlement of a support'),
  L: letter('L', 'span'),
  L1: letter('L', 'first span', '1'),
  L2: letter('L', 'second span', '2'),
  a: letter('a', place),
  b: letter('b', place),
  c: letter('c', place),
  E: letter('E', 'modulus of elasticity'),
  I: letter('I', 'second moment of area about the bending axis'),
};

// The letters as they stand in formulas.
/** w in a formula. */
export const w: Expression = name(symbols.w);
/** w1 in a formula. */
export const w1: Expression = name(symbols.w1);
/** w2 in a formula. */
export const w2: Expression = name(symbols.w2);
/** P in a formula. */
export const P: Expression = name(symbols.P);
/** P1 in a formula. */
export const P1: Expression = name(symbols.P1);
/** P2 in a formula. */
export const P2: Expression = name(symbols.P2);
/** C in a formula. */
export const C: Expression = name(symbols.C);
/** δ in a formula. */
export const δ: Expression = name(symbols.δ);
/** L in a formula. */
export const L: Expression = name(symbols.L);
/** L1 in a formula. */
export const L1: Expression = name(symbols.L1);
/** L2 in a formula. */
export const L2: Expression = name(symbols.L2);
/** a in a formula. */
export const a: Expression = name(symbols.a);
/** b in a formula. */
export const b: Expression = name(symbols.b);
/** c in a formula. */
export const c: Expression = name(symbols.c);
/** E in a formula. */
export const E: Expression = name(symbols.E);
/** I in a formula. */
export const I: Expression = name(symbols.I);

/** The flexural stiffness E I under a fraction, after other factors. */
export function overEI(over: Part, ...under: readonly Part[]): Expression {
  return div(over, mul(...under, E, I));
}

/** The symbol of the reaction at the n-th support of a formula's view, 0 the first. */
export function reactionLetter(index: number): Symbol {
  return letter('R', 'vertical reaction', `support ${index}`);
}

/** The symbol of the bending moment at the n-th support of a formula's view. */
export function momentLetter(index: number): Symbol {
  return letter('M', 'bending moment at a support', `support ${index}`);
}

/** The reaction found by an earlier formula of the case. */
export function R(index: number): Expression {
  return name(reactionLetter(index));
}

/** The bending moment at a support found by an earlier formula of the case. */
export function M(index: number): Expression {
  return name(momentLetter(index));
}
