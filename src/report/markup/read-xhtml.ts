import { SaxesParser } from 'saxes';

/** An element of a filled template, or the text between elements. */
export type Node =
  | { readonly kind: 'text'; readonly text: string }
  | {
      readonly kind: 'element';
      readonly name: string;
      readonly attributes: Readonly<Record<string, string>>;
      readonly children: readonly Node[];
    };

/** An element, for readers that have told text apart already. */
export type Element = Extract<Node, { kind: 'element' }>;

/** Markup that is not well formed: why, and the line of the filled text that it stands on. */
export interface MarkupFault {
  readonly message: string;
  readonly line: string;
}

interface Open {
  /** Line of the filled text on which it was opened. */
  readonly line: number;
  readonly name: string;
  readonly attributes: Readonly<Record<string, string>>;
  readonly children: Node[];
}

/** Reads a filled template as XML: a stray or unclosed tag is reported with its line and never repaired. */
export function readXhtml(
  xhtml: string,
): { readonly root: Element } | { readonly fault: MarkupFault } {
  const parser = new SaxesParser({ xmlns: false });
  const root: Open = { line: 1, name: 'body', attributes: {}, children: [] };
  const open: Open[] = [root];
  let fault: MarkupFault | undefined;
  let lastClosed: Open | undefined;
  parser.on('error', (error) => {
    const message = error.message.replace(/^\d+:\d+: /, '').replace(/\.$/, '');
    // saxes closes what was left open before it complains: that is what has to be mended.
    const inner = message === 'unexpected close tag' ? lastClosed : undefined;
    fault ??= {
      message:
        inner === undefined ? message : `${message} while <${inner.name}> was open`,
      line: lineOf(xhtml, inner?.line ?? parser.line - 1),
    };
  });
  parser.on('opentag', (tag) => {
    open.push({
      line: parser.line - 1,
      name: tag.name,
      attributes: tag.attributes,
      children: [],
    });
  });
  parser.on('closetag', () => {
    const closed = open.pop();
    lastClosed = closed;
    if (closed === undefined) return;
    const { name, attributes, children } = closed;
    open.at(-1)?.children.push({ kind: 'element', name, attributes, children });
  });
  parser.on('text', (text) => open.at(-1)?.children.push({ kind: 'text', text }));
  parser.write(`<body>\n${xhtml}\n</body>`).close();
  if (fault !== undefined) return { fault };
  const [body] = root.children;
  if (body?.kind !== 'element')
    return { fault: { message: 'nothing came out', line: '' } };
  return { root: body };
}

function lineOf(text: string, line: number): string {
  return (text.split('\n')[line - 1] ?? '').trim();
}
