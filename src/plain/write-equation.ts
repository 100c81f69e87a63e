import { lineToLinear, toLinear } from '../equation/index.ts';
import type { Statement, StatementLine } from '../equation/index.ts';
import { padAfter, padBefore, textWidth } from './text-width.ts';
import { wrapText } from './wrap-text.ts';

/** Left sides wider than this share of the line stand on lines of their own. */
const widestLeft = 0.4;

/** A printed line taken apart at its first relation sign. */
interface SplitLine {
  readonly left: string;
  /** From the first relation sign on. */
  readonly right: string;
  readonly margin: string;
}

/**
 * A statement as lines of text, stacked on their relation signs. What is too wide is broken before a
 * sign that stands outside all parentheses; a carried result stands in brackets, and what the sheet
 * has in its margin stands flush right.
 */
export function writeEquation(statement: Statement, width: number): readonly string[] {
  const lines = statement.lines.map(splitLine);
  const most = Math.floor(width * widestLeft);
  const lefts = lines.map(({ left }) => textWidth(left)).filter((one) => one <= most);
  const column = Math.max(0, ...lefts);
  return lines.flatMap((line) => writeLine(line, column, width));
}

function splitLine(line: StatementLine): SplitLine {
  const { left, chain, margin } = line;
  const last = chain.length - 1;
  const links = chain.map(({ sign, of }, index) =>
    line.boxed === true && index === last
      ? `${sign} [ ${toLinear(of)} ]`
      : `${sign} ${toLinear(of)}`,
  );
  return {
    left: left === undefined ? '' : lineToLinear({ left, chain: [] }),
    right: links.join(' '),
    margin: margin ?? '',
  };
}

function writeLine(
  { left, right, margin }: SplitLine,
  column: number,
  width: number,
): readonly string[] {
  const isApart = textWidth(left) > column;
  const above = isApart ? breakBeforeSigns(left, width) : [];
  const gap = column === 0 ? '' : ' ';
  const indent = ' '.repeat(column) + gap;
  const broken = breakBeforeSigns(right, width - textWidth(indent));
  const beside = broken.map((part, index) => {
    if (index > 0) return `${indent}  ${part}`;
    return isApart ? indent + part : padAfter(left, column) + gap + part;
  });
  return withMargin([...above, ...beside], margin, width);
}

function withMargin(
  lines: readonly string[],
  margin: string,
  width: number,
): readonly string[] {
  if (margin === '') return lines;
  const last = lines.at(-1) ?? '';
  const room = width - textWidth(last) - 2;
  return room >= textWidth(margin)
    ? [...lines.slice(0, -1), `${last}  ${padBefore(margin, room)}`]
    : [...lines, ...wrapText(margin, width).map((part) => padBefore(part, width))];
}

/** Fills lines with the parts between signs; lines after the first are two columns narrower. */
function breakBeforeSigns(text: string, width: number): readonly string[] {
  const lines: string[] = [];
  let current = '';
  for (const part of partsBetweenSigns(text)) {
    const room = lines.length === 0 ? width : width - 2;
    const joined = current === '' ? part : `${current} ${part}`;
    if (textWidth(joined) <= room) {
      current = joined;
      continue;
    }
    if (current !== '') lines.push(current);
    const wrapped = wrapText(holdParentheses(part), width - 2).map((line) =>
      line.replaceAll('\u00a0', ' '),
    );
    lines.push(...wrapped.slice(0, -1));
    current = wrapped.at(-1) ?? '';
  }
  return [...lines, current];
}

/** The same with its blanks inside parentheses made unbreakable. */
function holdParentheses(text: string): string {
  let depth = 0;
  return text.replace(/[([)\] ]/gu, (sign) => {
    if (sign === ' ') return depth > 0 ? '\u00a0' : ' ';
    depth += sign === '(' || sign === '[' ? 1 : -1;
    return sign;
  });
}

const signs: ReadonlySet<string> = new Set([
  '+',
  '−',
  '=',
  '≈',
  '≤',
  '≥',
  '<',
  '>',
  '≠',
]);
const leading = /^[=≈≤≥<>≠]$/u;

/** The words of a line gathered into parts, each beginning with a sign outside all parentheses; a relation sign that begins the line takes its first term along. */
function partsBetweenSigns(text: string): readonly string[] {
  const parts: string[] = [];
  let depth = 0;
  for (const word of text.split(' ')) {
    const last = parts.at(-1);
    const begins =
      signs.has(word) && depth === 0 && !(last !== undefined && leading.test(last));
    if (last === undefined || begins) parts.push(word);
    else parts[parts.length - 1] = `${last} ${word}`;
    depth += countOf(word, /[([]/gu) - countOf(word, /[)\]]/gu);
  }
  return parts;
}

function countOf(text: string, pattern: RegExp): number {
  return text.match(pattern)?.length ?? 0;
}
