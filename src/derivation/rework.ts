import { recheck, withEnoughFigures, type Statement } from '../equation/index.ts';

/**
 * A statement that a reader can work again from the page: lines that would miss by more than one
 * unit of the last printed place print more figures; one that no number of figures mends (a small
 * difference of great numbers) says in the margin that its values are carried unrounded.
 */
export function reworkable(statement: Statement): Statement {
  const raised = withEnoughFigures(statement);
  const missed = new Set(
    recheck(raised).flatMap(({ agrees, line }) => (agrees ? [] : [line])),
  );
  if (missed.size === 0) return raised;
  return {
    lines: raised.lines.map((line, index) =>
      missed.has(index)
        ? { ...line, margin: line.margin ?? 'carried unrounded' }
        : line,
    ),
  };
}
