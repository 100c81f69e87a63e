import type { Block, Cell, ColumnAlign, Row } from '../blocks.ts';
import type { Placed } from '../template-set.ts';
import { inlineOf, UnknownElement } from './inline.ts';
import type { Element, Node } from './read-xhtml.ts';

/** Reads elements as blocks. Text between blocks is a fault, since it would belong to none. */
export function blocksOf(
  nodes: readonly Node[],
  placed: readonly Placed[],
): readonly Block[] {
  const blocks: Block[] = [];
  for (const node of nodes) {
    if (node.kind === 'text') {
      if (node.text.trim() !== '') throw new StrayText(node.text.trim());
      continue;
    }
    const reader = readers[node.name];
    if (reader === undefined) throw new UnknownElement(node.name);
    blocks.push(...reader(node, placed, blocks.at(-1)));
  }
  return blocks;
}

/** Text that stands in no paragraph. */
export class StrayText extends Error {
  constructor(text: string) {
    super(`“${text.slice(0, 40)}” stands outside any paragraph`);
  }
}

type Reader = (
  element: Element,
  placed: readonly Placed[],
  before: Block | undefined,
) => readonly Block[];

const heading =
  (level: 1 | 2 | 3): Reader =>
  ({ attributes, children }, placed) => [
    {
      kind: 'heading',
      level,
      content: inlineOf(children, placed),
      ...(attributes.id === undefined ? {} : { anchor: attributes.id }),
      ...(attributes.bookmark === undefined
        ? {}
        : { bookmark: Number(attributes.bookmark) }),
    },
  ];

const paragraphStyles = [
  'body',
  'small',
  'lead',
  'note',
  'caution',
  'field',
  'title',
] as const;

const paragraph: Reader = ({ attributes, children }, placed) => {
  const style = paragraphStyles.find((known) => known === attributes.class) ?? 'body';
  const margin = children.find(
    (child) => child.kind === 'element' && child.name === 'aside',
  );
  const content = inlineOf(
    children.filter((child) => child !== margin),
    placed,
  );
  if (content.length === 0) return [];
  return [
    {
      kind: 'paragraph',
      content,
      style,
      ...(margin?.kind === 'element'
        ? { margin: inlineOf(margin.children, placed) }
        : {}),
      ...(attributes.keep === 'next' ? { keepWithNext: true } : {}),
    },
  ];
};

const list =
  (isOrdered: boolean): Reader =>
  ({ children }, placed) => {
    const items = children.flatMap((child) =>
      child.kind === 'element' && child.name === 'li' ? [itemOf(child, placed)] : [],
    );
    return items.length === 0 ? [] : [{ kind: 'list', isOrdered, items }];
  };

/** An item holds paragraphs, or text that becomes one. */
function itemOf({ children }: Element, placed: readonly Placed[]): readonly Block[] {
  const hasBlocks = children.some(
    (child) => child.kind === 'element' && child.name in readers,
  );
  if (hasBlocks) return blocksOf(children, placed);
  return [{ kind: 'paragraph', style: 'body', content: inlineOf(children, placed) }];
}

const aligns: readonly ColumnAlign[] = ['left', 'right', 'centre', 'decimal'];

const table: Reader = ({ attributes, children }, placed) => {
  const rowsIn = (name: string): readonly Row[] =>
    children.flatMap((child) =>
      child.kind === 'element' && child.name === name
        ? child.children.flatMap((row) =>
            row.kind === 'element' && row.name === 'tr' ? [rowOf(row, placed)] : [],
          )
        : [],
    );
  const caption = children.find(
    (child) => child.kind === 'element' && child.name === 'caption',
  );
  const columns = (attributes.columns ?? '').split(/\s+/).filter((word) => word !== '');
  const classes = (attributes.class ?? '').split(/\s+/);
  return [
    {
      kind: 'table',
      columns: columns.map((word) => aligns.find((known) => known === word) ?? 'left'),
      head: rowsIn('thead'),
      body: rowsIn('tbody'),
      ...(caption?.kind === 'element'
        ? { caption: inlineOf(caption.children, placed) }
        : {}),
      style: classes.includes('plain') ? 'plain' : 'ruled',
      size: classes.includes('small') ? 'small' : 'body',
      ...(classes.includes('wide') ? { isWide: true } : {}),
    },
  ];
};

function rowOf({ attributes, children }: Element, placed: readonly Placed[]): Row {
  const cells = children.flatMap((child): readonly Cell[] => {
    if (child.kind !== 'element' || (child.name !== 'td' && child.name !== 'th'))
      return [];
    const colSpan = Number(child.attributes.colspan ?? 1);
    return [
      {
        content: inlineOf(child.children, placed),
        isHead: child.name === 'th',
        colSpan,
      },
    ];
  });
  return {
    cells,
    ...(attributes.class === 'ruled' ? { isRuled: true } : {}),
    ...(attributes.class === 'heads' ? { headsRows: true } : {}),
  };
}

const section: Reader = ({ attributes, children }, placed) => {
  const blocks = blocksOf(children, placed);
  if (blocks.length === 0) return [];
  const role =
    attributes.class === 'box'
      ? 'box'
      : attributes.class === 'keep'
        ? 'keep'
        : 'section';
  const anchor = attributes.id;
  return [{ kind: 'group', role, blocks, ...(anchor === undefined ? {} : { anchor }) }];
};

const figure: Reader = ({ attributes, children }, placed) => {
  const drawing = children.find(
    (child) => child.kind === 'element' && child.name === 'drawing',
  );
  const item =
    drawing?.kind === 'element' ? placed[Number(drawing.attributes.ref)] : undefined;
  const caption = children.find(
    (child) => child.kind === 'element' && child.name === 'figcaption',
  );
  if (item?.kind !== 'figure') return [];
  return [
    {
      kind: 'figure',
      figure: item.figure,
      ...(caption?.kind === 'element'
        ? { caption: inlineOf(caption.children, placed) }
        : {}),
      ...(attributes.id === undefined ? {} : { anchor: attributes.id }),
    },
  ];
};

const equation: Reader = ({ attributes }, placed, before) => {
  const item = placed[Number(attributes.ref)];
  if (item?.kind !== 'statement' || item.statement.lines.length === 0) return [];
  const keepWithPrevious = before?.kind === 'paragraph' || before?.kind === 'equation';
  return [{ kind: 'equation', statement: item.statement, keepWithPrevious }];
};

const listing: Reader = ({ attributes }, placed) => {
  const item = placed[Number(attributes.ref)];
  return item?.kind === 'listing' ? [{ kind: 'listing', lines: item.lines }] : [];
};

const space: Reader = ({ attributes }) => [
  {
    kind: 'space',
    height: Number(attributes.height ?? 12),
    ...(attributes.label === undefined ? {} : { label: attributes.label }),
  },
];

const image: Reader = ({ attributes }) => [
  {
    kind: 'image',
    source: attributes.src ?? '',
    width: Number(attributes.width ?? 120),
    height: Number(attributes.height ?? 60),
    alternate: attributes.alt ?? '',
  },
];

/** Every block element of the templates' HTML. */
const readers: Readonly<Record<string, Reader>> = {
  h1: heading(1),
  h2: heading(2),
  h3: heading(3),
  p: paragraph,
  ul: list(false),
  ol: list(true),
  table,
  section,
  figure,
  equation,
  listing,
  space,
  image,
};
