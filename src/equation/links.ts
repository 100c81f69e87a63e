import type { Expression } from './expression.ts';
import type { RelationSign, Statement, StatementLine } from './statement.ts';

/** One printed relation with the expressions on both sides of it. */
export interface Link {
  /** The line, from 0, and which relation of its chain, from 0. */
  readonly line: number;
  readonly index: number;
  readonly from: Expression;
  readonly sign: RelationSign;
  readonly to: Expression;
  readonly mode: 'equality' | 'closure';
}

/**
 * Every printed relation that is to be rechecked, in reading order. A line without a left side continues
 * the line above, so its first relation starts from the last expression there.
 */
export function linksOf({ lines }: Statement): readonly Link[] {
  return lines.flatMap((line, number) => {
    const mode = line.recheck ?? 'equality';
    if (mode === 'none') return [];
    return line.chain.flatMap(({ sign, of: to }, index) => {
      const from =
        index > 0
          ? line.chain[index - 1]?.of
          : (line.left ?? lastOf(lines.slice(0, number)));
      return from === undefined ? [] : [{ line: number, index, from, sign, to, mode }];
    });
  });
}

function lastOf(lines: readonly StatementLine[]): Expression | undefined {
  const line = lines.at(-1);
  return line?.chain.at(-1)?.of ?? line?.left;
}

/** The statement with the expressions on both sides of one of its relations replaced by those of `link`. */
export function replaceLink(statement: Statement, link: Link): Statement {
  const before = link.index > 0 || statement.lines[link.line]?.left !== undefined;
  const lines = statement.lines.map((line, number) => {
    if (number === link.line) return withSides(line, link, before);
    return number === link.line - 1 && !before ? withLast(line, link.from) : line;
  });
  return { ...statement, lines };
}

function withSides(line: StatementLine, link: Link, before: boolean): StatementLine {
  const chain = line.chain.map(({ sign, of }, index) => {
    if (index === link.index) return { sign, of: link.to };
    return { sign, of: index === link.index - 1 ? link.from : of };
  });
  return before && link.index === 0
    ? { ...line, left: link.from, chain }
    : { ...line, chain };
}

function withLast(line: StatementLine, last: Expression): StatementLine {
  const { chain } = line;
  return {
    ...line,
    chain: chain.map((item, index) =>
      index === chain.length - 1 ? { ...item, of: last } : item,
    ),
  };
}
