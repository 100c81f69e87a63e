/*
 * KaTeX's tree, read into ours. This file and those beside it (katex-node: its nodes,
 * katex-classes: its stylesheet as a table, katex-look: what a node says of itself,
 * katex-pictures: its SVG) are the only ones that know KaTeX's insides, which it calls unstable: its version is pinned exactly, and whatever
 * it says that is not known here is refused by name.
 *
 *   katex-display > katex > katex-html > katex-base …   one base up to each allowed line break
 *                                      | katex-newline  a forced line break
 *                                      | katex-tag      the equation's label
 *
 * Below a base the tree is HTML for KaTeX's stylesheet: spans side by side, and for everything
 * that stands above or below something else a table,
 *
 *   vlist-t > vlist-r > vlist > line …    line = [pstrut, content], style.top
 *
 * in which the content's baseline is `top + pstrut's height` below the table's. The second
 * vlist-r only carries the depth, and `vlist-s` and struts only serve browsers: all are skipped.
 */
import katex from 'katex';
import { plainLook } from './equation-node.ts';
import type {
  EquationNode,
  EquationTree,
  StackLine,
  StackNode,
  WrittenLine,
} from './equation-node.ts';
import { ems, readLook } from './katex-look.ts';
import type { ReadLook } from './katex-look.ts';
import type { KatexNode } from './katex-node.ts';
import { readFrame, readPicture } from './katex-pictures.ts';
import { refuse } from './typeset-fault.ts';

type Render = (tex: string, options: Readonly<Record<string, unknown>>) => KatexNode;
const render = (katex as unknown as { readonly __renderToHTMLTree: Render })
  .__renderToHTMLTree;

/** Parses an equation and reads KaTeX's tree of it. Throws TypesetFault, without the TeX. */
export function readEquation(tex: string, display: boolean): EquationTree {
  const root = build(tex, display);
  const katexSpan = display ? root.children?.[0] : root;
  const html = katexSpan?.children?.[0];
  if (html?.classes?.includes('katex-html') !== true) return refuse("KaTeX's tree");
  return readLines(html.children ?? []);
}

function build(tex: string, display: boolean): KatexNode {
  try {
    return render(tex, {
      displayMode: display,
      throwOnError: true,
      // A percent sign begins a comment: the rest of the equation would silently be lost.
      strict: (code: string) => (code === 'commentAtEnd' ? 'error' : 'ignore'),
      macros: refusedMacros(),
      trust: ({ command }: { readonly command: string }) => refuse(command),
    });
  } catch (error) {
    if (isParseError(error)) {
      const place =
        error.position === undefined ? '' : `, character ${error.position + 1}`;
      return refuse(`the TeX (${error.rawMessage}${place})`);
    }
    throw error;
  }
}

/** Macros that write to a console, which is the machine's and not ours. */
function refusedMacros(): Readonly<Record<string, () => never>> {
  // Made anew each time: KaTeX writes the definitions of \gdef into the table it is given.
  return Object.fromEntries(
    ['\\message', '\\errmessage', '\\show'].map((name) => [name, () => refuse(name)]),
  );
}

interface ParseError {
  readonly rawMessage: string;
  readonly position?: number;
}

function isParseError(error: unknown): error is ParseError {
  return error instanceof Error && 'rawMessage' in error;
}

function readLines(parts: readonly KatexNode[]): EquationTree {
  const lines: WrittenLine[] = [];
  let nodes: EquationNode[] = [];
  let gapAbove = 0;
  let tag: EquationNode | undefined;
  for (const part of parts) {
    if (part.classes?.includes('katex-newline') === true) {
      lines.push({ nodes, gapAbove });
      nodes = [];
      gapAbove = ems(part.style?.marginTop);
    } else if (part.classes?.includes('katex-tag') === true) {
      tag = readNode(part);
    } else {
      nodes.push(...readChildren(part));
    }
  }
  lines.push({ nodes, gapAbove });
  return { lines, tag };
}

function readChildren(node: KatexNode): EquationNode[] {
  const read: EquationNode[] = [];
  for (const child of node.children ?? []) {
    if (!isStrut(child)) read.push(readNode(child));
  }
  return read;
}

/** Struts and their like hold a browser's lines open; vlist-s is a table cell for Safari. */
function isStrut(node: KatexNode): boolean {
  const first = node.classes?.[0];
  return first === 'katex-strut' || first === 'pstrut' || first === 'vlist-s';
}

function readNode(node: KatexNode): EquationNode {
  if (node.src !== undefined) return refuse('\\includegraphics');
  const read = readLook(node);
  if (node.text !== undefined) return { kind: 'glyphs', ...read.look, text: node.text };
  switch (read.kind) {
    case 'stack':
      return readStack(node, read);
    case 'bar':
      return readBar(node, read);
    case 'rule':
      return readRule(node, read);
    case 'separator':
      return readSeparator(node, read);
    case 'lap':
      return readLap(node, read);
    case 'strut':
      return { kind: 'row', ...read.look, children: [] };
    case undefined:
      return readSpan(node, read);
  }
}

function readSpan(node: KatexNode, { look }: ReadLook): EquationNode {
  const classes = node.classes ?? [];
  const picture = readPicture(node, look) ?? readFrame(node, look);
  if (picture !== undefined) return picture;
  const children = readChildren(node);
  if (classes.includes('mfrac')) {
    return { kind: 'row', ...look, children: children.map(topDown) };
  }
  if (node.style?.textShadow !== undefined) {
    return {
      kind: 'poor-bold',
      ...look,
      child: { kind: 'row', ...plainLook, children },
    };
  }
  return { kind: 'row', ...look, children };
}

/** KaTeX stacks from the foot up; a fraction is read and drawn from its numerator down. */
function topDown(node: EquationNode): EquationNode {
  return node.kind === 'stack' ? { ...node, lines: node.lines.toReversed() } : node;
}

function readStack(node: KatexNode, { look }: ReadLook): StackNode {
  const list = node.children?.[0]?.children?.[0];
  return { kind: 'stack', ...look, lines: (list?.children ?? []).map(readStackLine) };
}

function readStackLine(line: KatexNode): StackLine {
  const [strut, ...content] = line.children ?? [];
  if (strut?.classes?.[0] !== 'pstrut') return refuse("a line of KaTeX's stack");
  const { look } = readLook(line);
  const [node] = content;
  if (node === undefined || content.length > 1)
    return refuse("a line of KaTeX's stack");
  return {
    below: ems(line.style?.top) + ems(strut.style?.height),
    before: look.before,
    after: look.after,
    narrowedBy: narrowing(line.style?.width),
    atLeft: look.align === 'left',
    node: readNode(node),
  };
}

/** Reads `calc(100% - 0.1em)`, the width of a wide accent over a slanted letter. */
function narrowing(width: string | undefined): number | undefined {
  if (width === undefined) return undefined;
  const match = /^calc\(100% - (-?[\d.]+)em\)$/.exec(width);
  return match === null ? refuse(`the width "${width}"`) : Number(match[1]);
}

function readBar(node: KatexNode, { look }: ReadLook): EquationNode {
  const isStrike = node.classes?.includes('katex-sout') === true;
  const thickness = isStrike ? 0.08 : ems(node.style?.borderBottomWidth);
  const isDashed = node.classes?.includes('katex-hdashline') === true;
  return { kind: 'bar', ...look, thickness, isDashed };
}

function readRule(node: KatexNode, { look }: ReadLook): EquationNode {
  return {
    kind: 'rule',
    ...look,
    width: ems(node.style?.borderRightWidth),
    tall: ems(node.style?.borderTopWidth),
    raise: ems(node.style?.bottom),
  };
}

function readSeparator(node: KatexNode, { look }: ReadLook): EquationNode {
  return {
    kind: 'separator',
    ...look,
    thickness: ems(node.style?.borderRightWidth),
    tall: ems(node.style?.height),
    below: -ems(node.style?.verticalAlign),
    isDashed: node.style?.borderRightStyle === 'dashed',
  };
}

const lapSides = { llap: 'left', clap: 'centre', rlap: 'right' } as const;

function readLap(node: KatexNode, { look }: ReadLook): EquationNode {
  const name = (['llap', 'clap', 'rlap'] as const).find(
    (side) => node.classes?.includes(side) === true,
  );
  if (name === undefined) return refuse("KaTeX's lap");
  const child: EquationNode = {
    kind: 'row',
    ...plainLook,
    children: readChildren(node),
  };
  return { kind: 'lap', ...look, side: lapSides[name], child };
}
