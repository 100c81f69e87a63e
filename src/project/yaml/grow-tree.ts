import {
  isAlias,
  isMap,
  isScalar,
  isSeq,
  type Alias,
  type Document,
  type Node,
  type Pair,
  type Scalar,
} from 'yaml';
import type { Span } from '../../diagnostics/index.ts';
import type { Finding, Reading } from '../reading.ts';
import type { MapEntry, TextTree, Tree } from './tree.ts';

/** Aliases that one file may use; a definition needs none, so this is generous. */
const mostAliases = 100;
/** Nodes that aliases may unfold to, so that a few lines cannot grow into millions. */
const mostUnfolded = 10_000;
const deepest = 60;

interface Growth {
  readonly document: Document.Parsed;
  readonly reading: Reading;
  /** Anchored nodes being unfolded just now, outermost first. */
  readonly open: readonly Node[];
  readonly depth: number;
  /** Counts over the whole file. */
  readonly tally: { aliases: number; unfolded: number; gaveUp: boolean };
}

/** The tree of a parsed document; undefined where aliases or depth go out of hand, which is reported. */
export function growTree(
  document: Document.Parsed,
  reading: Reading,
): Tree | undefined {
  const tally = { aliases: 0, unfolded: 0, gaveUp: false };
  const whole = { file: reading.file, start: 0, end: reading.text.length };
  return grow(
    document.contents,
    { document, reading, open: [], depth: 0, tally },
    whole,
  );
}

function grow(node: Node | null, growth: Growth, around: Span): Tree | undefined {
  const span = spanOf(node, growth.reading, around);
  if (growth.open.length > 0) growth.tally.unfolded += 1;
  const excess = excessOf(growth);
  if (excess !== undefined) {
    giveUp(growth, span, excess);
    return undefined;
  }
  if (node === null) return { kind: 'empty', span };
  if (isAlias(node)) return unfold(node, growth, span);
  if (isScalar(node)) return scalarTree(node, span);
  const inner = { ...growth, depth: growth.depth + 1 };
  if (isSeq(node)) {
    const items = node.items.map((item) => grow(item as Node | null, inner, span));
    if (items.includes(undefined)) return undefined;
    return { kind: 'list', items: items as Tree[], span };
  }
  if (isMap(node)) return mapTree(node.items as Pair<Node, Node | null>[], inner, span);
  return undefined;
}

type Excess = Pick<Finding, 'code' | 'message' | 'hints'>;

function excessOf({ depth, tally }: Growth): Excess | undefined {
  if (depth > deepest)
    return {
      code: 'yaml-too-deep',
      message: 'the file nests deeper than it can be read',
      hints: ['write lists and maps at most a few levels deep'],
    };
  const message =
    tally.aliases > mostAliases
      ? `the file uses more than ${mostAliases} aliases`
      : tally.unfolded > mostUnfolded
        ? 'the aliases of this file unfold to more than it may hold'
        : undefined;
  return message === undefined
    ? undefined
    : { code: 'yaml-alias', message, hints: ['write the values out'] };
}

// One report is enough: what follows fails for the same reason.
function giveUp({ tally, reading }: Growth, span: Span, excess: Excess): void {
  if (!tally.gaveUp) reading.report({ ...excess, span });
  tally.gaveUp = true;
}

function unfold(alias: Alias, growth: Growth, span: Span): Tree | undefined {
  growth.tally.aliases += 1;
  const excess = excessOf(growth);
  if (excess !== undefined) {
    giveUp(growth, span, excess);
    return undefined;
  }
  const node = alias.resolve(growth.document);
  if (node !== undefined && !growth.open.includes(node))
    return grow(node, { ...growth, open: [...growth.open, node] }, span);
  growth.reading.report({
    code: 'yaml-alias',
    message:
      node === undefined
        ? `nothing is anchored as \`&${alias.source}\` before this alias`
        : `the alias \`*${alias.source}\` stands inside what it stands for`,
    span,
    hints: ['write the values out'],
  });
  return undefined;
}

function mapTree(
  pairs: readonly Pair<Node, Node | null>[],
  growth: Growth,
  span: Span,
): Tree | undefined {
  const entries = new Map<string, MapEntry>();
  let whole = true;
  for (const pair of pairs) {
    const key = keyTree(pair.key, growth, span);
    const after = key === undefined ? span : { ...key.span, start: key.span.end };
    const value = grow(pair.value, growth, after);
    if (value === undefined) whole = false;
    if (key === undefined || value === undefined) continue;
    const first = entries.get(key.text);
    if (first === undefined) entries.set(key.text, { key, value });
    else reportTwice(key, first.key, growth.reading);
  }
  return whole ? { kind: 'map', entries: [...entries.values()], span } : undefined;
}

function keyTree(node: Node, growth: Growth, around: Span): TextTree | undefined {
  const span = spanOf(node, growth.reading, around);
  if (!isScalar(node)) {
    growth.reading.report({
      code: 'yaml-key',
      message: 'a key must be a plain word or a text',
      span,
      hints: ['write `key: value`, the key without brackets, braces or `*`'],
    });
    return undefined;
  }
  const key = scalarText(node, span);
  if (key.text !== '<<' || key.quoted) return key;
  growth.reading.report({
    code: 'yaml-merge',
    message: '`<<` merges nothing in YAML 1.2',
    span,
    hints: ['write the entries out'],
  });
  return undefined;
}

function reportTwice(key: TextTree, first: TextTree, reading: Reading): void {
  const line = reading.lineOf(first.span.start);
  reading.report({
    code: 'duplicate-key',
    message: `\`${key.text}\` stands twice in one map; it is first given in line ${line}`,
    span: key.span,
    hints: ['keep one of the two, or give one another name'],
  });
}

function scalarTree(node: Scalar, span: Span): Tree {
  const text = scalarText(node, span);
  const isEmpty = !text.quoted && /^(~|null|Null|NULL)?$/.test(text.text);
  return isEmpty ? { kind: 'empty', span } : text;
}

function scalarText(node: Scalar, span: Span): TextTree {
  return {
    kind: 'text',
    text: typeof node.value === 'string' ? node.value : '',
    quoted: node.type !== 'PLAIN',
    span,
  };
}

function spanOf(node: Node | null, reading: Reading, around: Span): Span {
  if (node?.range === undefined || node.range === null)
    return { file: reading.file, start: around.start, end: around.start };
  const [start, end] = node.range;
  const length = reading.text.length;
  return {
    file: reading.file,
    start: Math.min(start, length),
    end: Math.min(end, length),
  };
}
