import { lineToLinear, toLinear, type StatementLine } from '../../equation/index.ts';
import type { FigureSpec } from '../../figure/index.ts';
import type { Block, Inline, Row } from '../blocks.ts';

/**
 * What a block says on paper, as a text to be compared: equal texts, no change. Sheet numbers,
 * anchors, the numbers of equations and of sections differ from revision to revision although
 * nothing changed, and are left out.
 */
export function asPrinted(block: Block): string {
  switch (block.kind) {
    case 'heading':
      return `heading ${block.level} ${headingWords(block.content)}`;
    case 'paragraph':
      return `${block.style} ${words(block.content)} | ${words(block.margin)}`;
    case 'list':
      return joined(
        'list',
        block.items.map((item) => joined('item', item.map(asPrinted))),
      );
    case 'table':
      return joined(tableHead(block), block.body.map(rowAsPrinted));
    case 'equation':
      return joined('equation', block.statement.lines.map(lineWords));
    case 'figure':
      return `figure ${figureText(block.figure)} | ${words(block.caption)}`;
    case 'image':
      return `image ${block.source} ${block.width} ${block.height} ${block.alternate}`;
    case 'listing':
      return joined('listing', block.lines);
    case 'space':
      return `space ${block.height} ${String(block.label)}`;
    case 'group':
      return joined(block.role, block.blocks.map(asPrinted));
  }
}

/** What heads a table: its caption, columns and head rows. Two tables of one head are one table, changed. */
export function tableHead(table: Extract<Block, { kind: 'table' }>): string {
  const { style, columns, head, caption } = table;
  return joined(
    `table ${style} ${columns.join()} ${words(caption)}`,
    head.map(rowAsPrinted),
  );
}

/** A row's cells. */
export function rowAsPrinted({ cells }: Row): string {
  return cells
    .map(({ content, colSpan }) => `${colSpan} ${words(content)}`)
    .join(' ¦ ');
}

function words(content: readonly Inline[] = []): string {
  return content.map(inlineWords).join('');
}

function inlineWords(inline: Inline): string {
  switch (inline.kind) {
    case 'text':
      return inline.style === 'plain'
        ? inline.text
        : `<${inline.style}>${inline.text}</>`;
    case 'math':
      return toLinear(inline.expression);
    case 'break':
      return '\n';
    case 'link':
      return words(inline.content);
    case 'sheet-number':
    case 'sheet-count':
      return '§';
    case 'blank':
      return '_';
  }
}

// Sections are counted: one that comes in between is no change of those after it.
const headingWords = (content: readonly Inline[]): string =>
  words(content).replace(/^\d+ /u, '');

function lineWords(line: StatementLine): string {
  const { margin = '', boxed } = line;
  const note = /^\(\d+\)$/u.test(margin) ? '' : margin;
  return `${lineToLinear(line)} ${boxed === true ? 'boxed' : ''} ${note}`;
}

// Numbers of a drawing are compared to what an eye could see of them.
const figuresSeen = 5;

/** A figure's facts, without the anchors that its links lead to. */
function figureText(figure: FigureSpec): string {
  return JSON.stringify(figure, (key, value: unknown) => {
    if (key === 'anchor') return undefined;
    return typeof value === 'number' ? Number(value.toPrecision(figuresSeen)) : value;
  });
}

const joined = (head: string, parts: readonly string[]): string =>
  [head, ...parts].join('\n');
