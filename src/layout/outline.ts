import type { Block, Part } from '../report/index.ts';
import type { Bookmark } from './paged-document.ts';
import { plainText } from './plain-text.ts';

type Heading = Extract<Block, { kind: 'heading' }>;

/** A part whose headings with a bookmark all have an anchor, and the titles of its anchors. */
export interface AnchoredPart {
  readonly part: Part;
  readonly titles: ReadonlyMap<string, string>;
  readonly bookmark: Bookmark;
}

/** Gives anchors to the headings that bookmarks lead to, and finds out what each anchor is called. */
export function anchorPart(given: Part): AnchoredPart {
  let count = 0;
  const anchorHeading = (block: Block): Block => {
    if (block.kind !== 'heading') return withInner(block, anchorHeading);
    if (block.bookmark === undefined || block.anchor !== undefined) return block;
    count += 1;
    return { ...block, anchor: `${given.anchor}-heading-${count}` };
  };
  const part = { ...given, blocks: given.blocks.map(anchorHeading) };
  const titles = new Map([[part.anchor, part.title]]);
  for (const block of withAllInner(part.blocks)) {
    const anchor = 'anchor' in block ? block.anchor : undefined;
    if (anchor !== undefined) titles.set(anchor, titleOf(block) || part.title);
  }
  return { part, titles, bookmark: bookmarkOf(part) };
}

/** The block with each block inside it changed. */
function withInner(block: Block, change: (inner: Block) => Block): Block {
  if (block.kind === 'group') return { ...block, blocks: block.blocks.map(change) };
  if (block.kind !== 'list') return block;
  return { ...block, items: block.items.map((item) => item.map(change)) };
}

/** Blocks and all blocks inside them, in reading order. */
function withAllInner(blocks: readonly Block[]): readonly Block[] {
  return blocks.flatMap((block) => [block, ...withAllInner(innerOf(block))]);
}

function innerOf(block: Block): readonly Block[] {
  if (block.kind === 'group') return block.blocks;
  return block.kind === 'list' ? block.items.flat() : [];
}

/** What an anchored block is called: a heading by its words, a figure by its caption, a group by its first heading. */
function titleOf(block: Block): string {
  if (block.kind === 'heading') return plainText(block.content);
  if (block.kind === 'figure') return plainText(block.caption ?? []);
  return plainText(headingsIn(innerOf(block))[0]?.content ?? []);
}

function headingsIn(blocks: readonly Block[]): readonly Heading[] {
  return withAllInner(blocks).filter((block) => block.kind === 'heading');
}

/**
 * The bookmark of a part with those of its headings below it. The heading of the whole part (the
 * first of the outermost depth, or one of the same words) adds none: it would say the same twice.
 */
function bookmarkOf(part: Part): Bookmark {
  const marked = headingsIn(part.blocks).filter(
    ({ bookmark, anchor }) => bookmark !== undefined && anchor !== undefined,
  );
  const own = marked[0]?.bookmark === 1 ? marked[0] : undefined;
  const entries = marked
    .filter((heading) => heading !== own)
    .map(({ bookmark: depth = 1, anchor = '', content }): Entry => {
      return { depth, title: plainText(content), anchor };
    })
    .filter(({ title }) => title !== part.title);
  return { title: part.title, anchor: part.anchor, children: nest(entries) };
}

interface Entry {
  readonly depth: number;
  readonly title: string;
  readonly anchor: string;
}

/** Turns a list with depths into a tree: an entry holds the deeper ones that follow it. */
function nest(entries: readonly Entry[]): readonly Bookmark[] {
  const [first, ...rest] = entries;
  if (first === undefined) return [];
  const next = rest.findIndex(({ depth }) => depth <= first.depth);
  const within = next < 0 ? rest : rest.slice(0, next);
  const { title, anchor } = first;
  return [
    { title, anchor, children: nest(within) },
    ...(next < 0 ? [] : nest(rest.slice(next))),
  ];
}
