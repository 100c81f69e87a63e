import { name, sum, type Expression } from '../../equation/index.ts';

/** What one load adds to the moments on both ends held fast, N·m, with its lines. */
export interface HeldByLoad {
  readonly number: string;
  readonly symbolic: readonly [Expression, Expression];
  readonly numeric: readonly [Expression, Expression];
  readonly values: readonly [number, number];
}

/** Letters of the formulas: a load's distances from the ends of its span, the span, a loaded stretch. */
export const a: Expression = name({
  letter: 'a',
  meaning: 'distance of a load from the left end of its span',
});
/** The span. */
export const l: Expression = name({ letter: 'L', meaning: 'length of a span' });
/** A loaded stretch. */
export const reach: Expression = name({
  letter: 'λ',
  meaning: 'length of a loaded stretch',
});
/** The distance from the right end. */
export const b: Expression = name({
  letter: 'b',
  meaning: 'distance of a load from the right end of its span',
});

/** The expression with a sign before it. */
export function signed(sign: number, of: Expression): Expression {
  return sign < 0 ? sum({ sign: -1, of }) : of;
}
