import { name, product, quotient } from '../../src/equation/index.ts';
import type { Expression, StatementLine } from '../../src/equation/index.ts';
import type {
  Block,
  Cell,
  Inline,
  Part,
  Report,
  Row,
  RunningFoot,
  TextStyle,
} from '../../src/report/index.ts';

type Kind<K extends Block['kind']> = Extract<Block, { kind: K }>;

/** Builders that let a report in a test look like the report. Text stands for a plain inline. */
export type Content = string | readonly Inline[];

export function text(words: string, style: TextStyle = 'plain'): Inline {
  return { kind: 'text', text: words, style };
}

export function inlines(content: Content): readonly Inline[] {
  return typeof content === 'string' ? [text(content)] : content;
}

export function link(anchor: string, content: Content): Inline {
  return { kind: 'link', anchor, content: inlines(content) };
}

export function sheetNumber(anchor: string): Inline {
  return { kind: 'sheet-number', anchor };
}

export function math(expression: Expression): Inline {
  return { kind: 'math', expression };
}

export function paragraph(
  content: Content,
  more: Partial<Kind<'paragraph'>> = {},
): Kind<'paragraph'> {
  return { kind: 'paragraph', content: inlines(content), style: 'body', ...more };
}

export function heading(
  level: 1 | 2 | 3,
  content: Content,
  more: Partial<Kind<'heading'>> = {},
): Kind<'heading'> {
  return { kind: 'heading', level, content: inlines(content), ...more };
}

export function list(
  items: readonly (Content | readonly Block[])[],
  isOrdered: boolean = false,
): Kind<'list'> {
  return {
    kind: 'list',
    isOrdered,
    items: items.map((item) => (isBlocks(item) ? item : [paragraph(item)])),
  };
}

function isBlocks(item: Content | readonly Block[]): item is readonly Block[] {
  const first = typeof item === 'string' ? undefined : item[0];
  return (
    first !== undefined &&
    ['paragraph', 'list', 'table', 'heading', 'equation'].includes(first.kind)
  );
}

export function cell(content: Content, more: Partial<Cell> = {}): Cell {
  return { content: inlines(content), isHead: false, colSpan: 1, ...more };
}

/** A row of cells; a string stands for a plain cell. */
export function row(...cells: readonly (string | Cell)[]): Row {
  return { cells: cells.map((of) => (typeof of === 'string' ? cell(of) : of)) };
}

/** A row of heads. */
export function headRow(...cells: readonly string[]): Row {
  return { cells: cells.map((words) => cell(words, { isHead: true })) };
}

export function table(
  columns: Kind<'table'>['columns'],
  rows: { readonly head?: readonly Row[]; readonly body: readonly Row[] },
  more: Partial<Kind<'table'>> = {},
): Kind<'table'> {
  const { head = [], body } = rows;
  return { kind: 'table', columns, head, body, style: 'ruled', size: 'body', ...more };
}

export function equation(
  lines: readonly StatementLine[],
  keepWithPrevious: boolean = false,
): Kind<'equation'> {
  return { kind: 'equation', statement: { lines }, keepWithPrevious };
}

export function group(
  role: Kind<'group'>['role'],
  blocks: readonly Block[],
  anchor?: string,
): Kind<'group'> {
  return {
    kind: 'group',
    role,
    blocks,
    ...(anchor === undefined ? {} : { anchor }),
  };
}

export function letter(of: string, subscript?: string): Expression {
  return name({
    letter: of,
    meaning: of,
    ...(subscript === undefined ? {} : { subscript }),
  });
}

/** `left = right` for a line of a statement. */
export function equals(left: Expression, right: Expression): StatementLine {
  return { left, chain: [{ sign: '=', of: right }] };
}

export { product, quotient };

export const foot: RunningFoot = {
  project: 'Harbour steps',
  number: '0417',
  subject: 'Part',
  revision: 'A',
  revisionDate: '2 May 2026',
  prepared: 'N. Aho, 1 May 2026',
  checked: '',
  status: 'Preliminary',
};

export function part(
  title: string,
  blocks: readonly Block[],
  more: Partial<Part> = {},
): Part {
  const anchor = title.toLowerCase().replace(/\s+/g, '-');
  return {
    anchor,
    title,
    look: 'body',
    foot: { ...foot, subject: title },
    blocks,
    ...more,
  };
}

export function report(parts: readonly Part[], more: Partial<Report> = {}): Report {
  return { title: 'Harbour steps', language: 'en', paper: 'letter', parts, ...more };
}

/** Words without meaning, always the same for a number of them. */
export function words(count: number, from: number = 0): string {
  const stock =
    'beam carries its loads to the supports through shear and bending while each reaction answers for a share of the whole and nothing else remains to be found about equilibrium'.split(
      ' ',
    );
  return Array.from(
    { length: count },
    (_, index) => stock[(index + from) % stock.length],
  ).join(' ');
}
