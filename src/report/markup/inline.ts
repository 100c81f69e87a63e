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

function elementOf(element: Element, setting: Setting): readonly Inline[] {
  const { name, attributes, children } = element;
  switch (name) {
    case 'em':
    case 'strong':
    case 'code':
      return read(children, { ...setting, style: styles[name] ?? 'plain' });
    case 'span':
      return read(children, {
        ...setting,
        style: styles[attributes['class'] ?? ''] ?? setting.style,
      });
    case 'br':
      return [{ kind: 'break' }];
    case 'math': {
      const item = setting.placed[Number(attributes['ref'])];
      return item?.kind === 'expression'
        ? [{ kind: 'math', expression: item.expression }]
        : [];
    }
    case 'a':
      return [
        {
          kind: 'link',
          anchor: (attributes['href'] ?? '').replace(/^#/, ''),
          content: read(children, setting),
        },
      ];
    case 'sheet':
      return [{ kind: 'sheet-number', anchor: attributes['of'] ?? '' }];
    case 'sheet-count':
      return [{ kind: 'sheet-count' }];
    case 'blank':
      return [{ kind: 'blank', width: Number(attributes['width'] ?? 60) }];
    default:
      throw new UnknownElement(name);
  }
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
