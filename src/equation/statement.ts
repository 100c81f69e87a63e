import type { Expression } from './expression.ts';

/** The relation between two sides. */
export type RelationSign = '=' | '≈' | '≤' | '≥' | '<' | '>' | '≠';

/**
 * One printed line: `left = first = second`. Without `left` it continues the line above, under
 * its relation sign. Lines are stacked on their relation signs; a chain of more than two
 * relations does not belong on one line.
 */
export interface StatementLine {
  readonly left?: Expression;
  readonly chain: readonly { readonly sign: RelationSign; readonly of: Expression }[];
  /** Boxed: a result that is carried on. The box goes round the whole last expression. */
  readonly boxed?: boolean;
  /** Stands in the right margin: a clause, an equation number, a flag. */
  readonly margin?: string;
  /** How the line is rechecked from its printed figures (see recheck); default `equality`. */
  readonly recheck?: 'equality' | 'closure' | 'none';
}

/** Lines worked one after another and aligned on their relation signs. */
export interface Statement {
  readonly lines: readonly StatementLine[];
}
