import type { Inline, TextStyle } from '../blocks.ts';
import type { Placed } from '../template-set.ts';
import type { Element, Node } from './read-xhtml.ts';

/** Reads the inside of a paragraph, heading or cell: text with styles, mathematics, links. */
export function inlineOf(
  nodes: readonly Node[],
  placed: readonly Placed[],
): readonly Inline[] {
  return trim(read(nodes, { style: 'plain', placed }));
}

interface Setting {
  readonly style: TextStyle;
  readonly placed: readonly Placed[];
}

function read(nodes: readonly Node[], setting: Setting): readonly Inline[] {
  return nodes.flatMap((node) =>
    node.kind === 'text' ? textOf(node.text, setting.style) : elementOf(node, setting),
  );
}

/** White space collapses to one space, no-break spaces stay. */
function textOf(text: string, style: TextStyle): readonly Inline[] {
  const collapsed = text.replace(/[ \t\r\n]+/g, ' ');
  return collapsed === '' ? [] : [{ kind: 'text', text: collapsed, style }];
}

const styles: Readonly<Record<string, TextStyle>> = {
  em: 'emphasis',
  strong: 'strong',
  'small-caps': 'small-caps',
  muted: 'muted',
  code: 'code',
};

type Reader = (element: Element, setting: Setting) => readonly Inline[];

const styled: Reader = ({ name, attributes, children }, setting) => {
  const style = styles[name === 'span' ? (attributes.class ?? '') : name];
  return read(children, { ...setting, style: style ?? setting.style });
};

/** Every element that can stand in a line. */
const readers: Readonly<Record<string, Reader>> = {
  em: styled,
  strong: styled,
  code: styled,
  span: styled,
  br: () => [{ kind: 'break' }],
  math: ({ attributes }, { placed }) => {
    const item = placed[Number(attributes.ref)];
    return item?.kind === 'expression'
      ? [{ kind: 'math', expression: item.expression }]
      : [];
  },
  a: ({ attributes, children }, setting) => [
    {
      kind: 'link',
      anchor: (attributes.href ?? '').replace(/^#/, ''),
      content: read(children, setting),
    },
  ],
  sheet: ({ attributes }) => [{ kind: 'sheet-number', anchor: attributes.of ?? '' }],
  'sheet-count': () => [{ kind: 'sheet-count' }],
  blank: ({ attributes }) => [{ kind: 'blank', width: Number(attributes.width ?? 60) }],
};

function elementOf(element: Element, setting: Setting): readonly Inline[] {
  const reader = readers[element.name];
  if (reader === undefined) throw new UnknownElement(element.name);
  return reader(element, setting);
}

/** An element that the templates' HTML does not have at this place. */
export class UnknownElement extends Error {
  constructor(name: string) {
    super(`<${name}> is no element that can stand here`);
  }
}

/** Spaces at the two ends are the template's own indentation. */
function trim(list: readonly Inline[]): readonly Inline[] {
  const items = [...list];
  const first = items[0];
  if (first?.kind === 'text')
    items[0] = { ...first, text: first.text.replace(/^ +/, '') };
  const last = items.at(-1);
  if (last?.kind === 'text')
    items[items.length - 1] = { ...last, text: last.text.replace(/ +$/, '') };
  return items.filter((item) => item.kind !== 'text' || item.text !== '');
}
