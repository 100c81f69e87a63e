import type { EquationNode, RowNode } from './equation-node.ts';

/**
 * What a segment begins with: a relation, a sign between the terms of a sum, a sign between the
 * factors of a product, or something else.
 */
export type SegmentStart = 'relation' | 'term' | 'factor' | 'other';

/**
 * A part of an equation that stays on one line. It begins with the relation or operator that
 * it may be broken before, and ends before the next.
 */
export interface Segment {
  /** The space before it, which is left out where a line begins with the segment. */
  readonly gap: readonly EquationNode[];
  readonly nodes: readonly EquationNode[];
  /** How many of its nodes are the relation or operator and the space after it. */
  readonly headLength: number;
  readonly startsWith: SegmentStart;
  /** 0 on the outer level, one more within each pair of brackets or braces. */
  readonly level: number;
}

/**
 * Finds where an equation may be broken: before relations and binary operators, as hand-set
 * displays are (Knuth, The TeXbook, p. 195), and after an \allowbreak. KaTeX itself allows
 * breaks AFTER them (p. 173, for text); its own allowance is honoured where it forbids one.
 */
export function findSegments(nodes: readonly EquationNode[]): readonly Segment[] {
  const items = flatten(nodes, 0);
  const starts = items.flatMap((_, index) =>
    isBreakBefore(items, index) ? [index] : [],
  );
  return [0, ...starts].map((start, order) =>
    segmentFrom(items, start, starts[order] ?? items.length),
  );
}

interface Item {
  readonly node: EquationNode;
  readonly level: number;
}

/** Nodes side by side, looking into rows that hold an operator; brackets raise the level. */
function flatten(nodes: readonly EquationNode[], outer: number): readonly Item[] {
  const items: Item[] = [];
  let level = outer;
  for (const node of nodes) {
    if (node.role === 'close') level = Math.max(outer, level - 1);
    if (node.kind === 'row' && isOpenToBreaks(node)) {
      const colour = node.colour;
      const children = node.children.map((child) =>
        colour === undefined || child.colour !== undefined
          ? child
          : { ...child, colour },
      );
      items.push(...flatten(children, level + 1));
    } else {
      items.push({ node, level });
    }
    if (node.role === 'open') level += 1;
  }
  return items;
}

/** A row that changes nothing about its children and holds a place to break at. */
function isOpenToBreaks(row: RowNode): boolean {
  const { scale, before, after, drop, shift } = row;
  const changes =
    scale !== 1 || [before, after, drop, shift].some((length) => length !== 0);
  const inherits = row.face !== undefined || row.align !== undefined;
  if (changes || inherits || row.advance !== undefined || row.role !== 'other')
    return false;
  const tallest = Math.max(0, ...row.children.map(({ height }) => height));
  const isSmashed = row.height < tallest;
  return !isSmashed && row.children.some(holdsBreak);
}

function holdsBreak(node: EquationNode): boolean {
  return isSign(node) || (node.kind === 'row' && isOpenToBreaks(node));
}

function isSign(node: EquationNode | undefined): boolean {
  return node?.role === 'relation' || node?.role === 'operator';
}

function isSpace(node: EquationNode | undefined): boolean {
  return node?.role === 'space' || node?.role === 'break-forbidden';
}

function isBreakBefore(items: readonly Item[], index: number): boolean {
  const role = (at: number): EquationNode['role'] | undefined => items[at]?.node.role;
  if (role(index - 1) === 'break-allowed') return true;
  if (!isSign(items[index]?.node)) return false;
  const before = skipSpaces(items, index - 1, -1);
  const isForbidden = items
    .slice(before + 1, index + 2)
    .some(({ node }) => node.role === 'break-forbidden');
  // Of two signs in a row the second stays with the first, and nothing leaves its bracket.
  const isAlone =
    before >= 0 && !isSign(items[before]?.node) && role(before) !== 'open';
  return isAlone && !isForbidden;
}

const factorSigns = new Set(['⋅', '×', '÷', '∗', '∘']);

function startOf(node: EquationNode | undefined): SegmentStart {
  if (node?.role === 'relation') return 'relation';
  if (node?.role !== 'operator') return 'other';
  return node.kind === 'glyphs' && factorSigns.has(node.text) ? 'factor' : 'term';
}

/** The first place from `at` on, going by `step`, that holds no space. */
function skipSpaces(items: readonly Item[], at: number, step: 1 | -1): number {
  let place = at;
  while (isSpace(items[place]?.node)) place += step;
  return place;
}

function segmentFrom(items: readonly Item[], start: number, next: number): Segment {
  const gapStart = start === 0 ? 0 : skipSpaces(items, start - 1, -1) + 1;
  const isLast = next === items.length;
  const end = isLast ? next : skipSpaces(items, next - 1, -1) + 1;
  const startsWith = startOf(items[start]?.node);
  const headEnd = startsWith === 'other' ? start : skipSpaces(items, start + 1, 1);
  return {
    gap: items.slice(gapStart, start).map(({ node }) => node),
    nodes: items.slice(start, end).map(({ node }) => node),
    headLength: Math.min(headEnd, end) - start,
    startsWith,
    level: items[start]?.level ?? 0,
  };
}
