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
  const anchorBlock = (block: Block): Block => {
    switch (block.kind) {
      case 'heading': {
        if (block.bookmark === undefined || block.anchor !== undefined) return block;
        count += 1;
        return { ...block, anchor: `${given.anchor}-heading-${count}` };
      }
      case 'group':
        return { ...block, blocks: block.blocks.map(anchorBlock) };
      case 'list':
        return { ...block, items: block.items.map((item) => item.map(anchorBlock)) };
      case 'paragraph':
      case 'table':
      case 'equation':
      case 'figure':
      case 'image':
      case 'listing':
      case 'space':
        return block;
    }
  };
  const part = { ...given, blocks: given.blocks.map(anchorBlock) };
  const titles = new Map([[part.anchor, part.title]]);
  for (const block of part.blocks) collectTitles(block, part.title, titles);
  return { part, titles, bookmark: bookmarkOf(part) };
}

function collectTitles(
  block: Block,
  fallback: string,
  titles: Map<string, string>,
): void {
  switch (block.kind) {
    case 'heading':
      if (block.anchor !== undefined)
        titles.set(block.anchor, plainText(block.content));
      return;
    case 'figure':
      if (block.anchor !== undefined)
        titles.set(block.anchor, plainText(block.caption ?? []) || fallback);
      return;
    case 'group':
      if (block.anchor !== undefined)
        titles.set(block.anchor, titleWithin(block.blocks) ?? fallback);
      for (const inner of block.blocks) collectTitles(inner, fallback, titles);
      return;
    case 'list':
      for (const inner of block.items.flat()) collectTitles(inner, fallback, titles);
      return;
    case 'paragraph':
    case 'table':
    case 'equation':
    case 'image':
    case 'listing':
    case 'space':
      return;
  }
}

function headingsIn(blocks: readonly Block[]): readonly Heading[] {
  return blocks.flatMap((block): readonly Heading[] => {
    if (block.kind === 'heading') return [block];
    if (block.kind === 'group') return headingsIn(block.blocks);
    return block.kind === 'list' ? headingsIn(block.items.flat()) : [];
  });
}

function titleWithin(blocks: readonly Block[]): string | undefined {
  const heading = headingsIn(blocks)[0];
  return heading === undefined ? undefined : plainText(heading.content);
}

/** The bookmark of a part with those of its headings below it; a heading that repeats the part's title adds none. */
function bookmarkOf(part: Part): Bookmark {
  const entries = headingsIn(part.blocks).flatMap(({ bookmark, anchor, content }) => {
    const title = plainText(content);
    return bookmark === undefined || anchor === undefined || title === part.title
      ? []
      : [{ depth: bookmark, title, anchor }];
  });
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
