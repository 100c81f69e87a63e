/** An element of a small XML document: its name with prefix, its attributes as written, its text or its children. */
export interface XmlElement {
  readonly name: string;
  readonly attributes: string;
  readonly text: string;
  readonly children: readonly XmlElement[];
}

interface OpenElement extends XmlElement {
  text: string;
  readonly children: OpenElement[];
}

// A processing instruction, a comment, a tag, or text up to the next of them.
const token =
  /<\?[^]*?\?>|<!--[^]*?-->|<(\/?)([^\s<>/]+)((?:\s+[^\s=<>]+\s*=\s*(?:"[^"<]*"|'[^'<]*'))*)\s*(\/?)>|([^<]+)/uy;

/**
 * Reads the XML of a metadata packet: elements, attributes, the five named entities and numeric
 * ones. No document type, no CDATA. Answers with what is wrong where it is not well formed.
 */
export function readXml(source: string): XmlElement | { readonly problem: string } {
  const top: OpenElement = { name: '', attributes: '', text: '', children: [] };
  const open: OpenElement[] = [top];
  let at = 0;
  while (at < source.length) {
    token.lastIndex = at;
    const match = token.exec(source);
    if (match === null) return { problem: `the metadata break off at character ${at}` };
    at += match[0].length;
    const problem = follow(match, open);
    if (problem !== undefined) return { problem };
  }
  const [root, second] = top.children;
  if (open.length > 1)
    return { problem: `${open.at(-1)?.name} has no end in the metadata` };
  if (root === undefined || second !== undefined || top.text.trim() !== '')
    return { problem: 'the metadata are not one element' };
  return root;
}

/** Follows one token; answers with what is wrong, if anything is. */
function follow(match: RegExpExecArray, open: OpenElement[]): string | undefined {
  const [, slash, name, attributes = '', selfClosing, text] = match;
  const parent = open.at(-1);
  if (parent === undefined) return 'the metadata end before they are over';
  if (text !== undefined) {
    const plain = decodeEntities(text);
    if (plain === undefined) return `an ampersand stands alone in ${parent.name}`;
    parent.text += plain;
    return undefined;
  }
  if (name === undefined) return undefined;
  if (slash === '/') {
    open.pop();
    return parent.name === name ? undefined : `${parent.name} ends as ${name}`;
  }
  const element = { name, attributes, text: '', children: [] };
  parent.children.push(element);
  if (selfClosing !== '/') open.push(element);
  return undefined;
}

const entities: Readonly<Record<string, string>> = {
  amp: '&',
  lt: '<',
  gt: '>',
  quot: '"',
  apos: "'",
};

function decodeEntities(text: string): string | undefined {
  const plain = text.replace(/&(?:#x([0-9A-Fa-f]+)|#(\d+)|(\w+));/gu, decode);
  const ampersands = text.split('&').length - 1;
  const whole =
    text.match(/&(?:#x[0-9A-Fa-f]+|#\d+|amp|lt|gt|quot|apos);/gu)?.length ?? 0;
  return ampersands === whole ? plain : undefined;
}

function decode(whole: string, hex?: string, decimal?: string, name?: string): string {
  if (name !== undefined) return entities[name] ?? whole;
  const code = hex === undefined ? Number(decimal) : parseInt(hex, 16);
  return code <= 0x10ffff ? String.fromCodePoint(code) : '\uFFFD';
}
