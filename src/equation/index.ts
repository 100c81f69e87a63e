/**
 * Equations as values: written once, then read by many.
 *
 * An expression is a tree of terms, figures and symbols; a statement is printed lines of them. Builders
 * make the trees; readers turn one tree into TeX, into linear text, into speech, into a value, and rework a
 * printed line from its rounded figures. No equation is ever a string assembled for print.
 *
 * @module
 */
export type {
  Bracket,
  Call,
  Expression,
  Figure,
  FunctionOf,
  Integral,
  Name,
  Power,
  Product,
  Quotient,
  Sum,
  SumOf,
  Symbol,
} from './expression.ts';
export type { Print } from '../units/index.ts';
export type { RelationSign, Statement, StatementLine } from './statement.ts';
export { symbolKey } from './symbol-key.ts';
export {
  bracket,
  call,
  exactly,
  figure,
  functionOf,
  given,
  integral,
  minus,
  name,
  negate,
  number,
  plus,
  power,
  product,
  quotient,
  sum,
  sumOfForces,
  sumOfMoments,
  zero,
} from './build.ts';
export type { Term } from './build.ts';
export { toTex } from './to-tex.ts';
export { symbolToTex } from './tex-symbol.ts';
export { lineToTex } from './line-to-tex.ts';
export type { TexLine } from './line-to-tex.ts';
export { lineToLinear, symbolText, toLinear } from './to-linear.ts';
export { lineToSpeech, toSpeech } from './to-speech.ts';
export { evaluate, symbolValues } from './evaluate.ts';
export type { SymbolValues } from './evaluate.ts';
export { substitute } from './substitute.ts';
export { cancelUnits } from './cancel-units.ts';
export { withConversion } from './with-conversion.ts';
export { resultUnit } from './result-unit.ts';
export { reduce, reduceTerms } from './reduce.ts';
export { recheck, withEnoughFigures } from './recheck.ts';
export type { RecheckedLink } from './recheck.ts';
export { collectSymbols } from './collect-symbols.ts';
