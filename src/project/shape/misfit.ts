import type { Span } from '../../diagnostics/index.ts';
import type { Reading } from '../reading.ts';
import { treeWords, type Tree } from '../yaml/tree.ts';

/** Reports that a place holds something of another kind than belongs there. */
export function reportMisfit(
  tree: Tree,
  expects: string,
  reading: Reading,
  hints: readonly string[] = [],
): void {
  const isEmpty = tree.kind === 'empty';
  reading.report({
    code: isEmpty ? 'empty-value' : 'wrong-shape',
    message: isEmpty
      ? `nothing is given where ${expects} belongs`
      : `${expects} belongs here, not ${treeWords(tree)}`,
    span: firstLine(tree.span, reading.text),
    hints: isEmpty ? [...hints, 'give a value, or take the key out'] : hints,
  });
}

/** The part of a span that lies on its first line, so that a fault of a whole map is marked at its head. */
export function firstLine(span: Span, text: string): Span {
  const length = text.slice(span.start, span.end).search(/[\r\n]/);
  return length < 0 ? span : { ...span, end: span.start + length };
}
