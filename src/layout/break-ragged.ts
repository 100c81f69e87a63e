import { scaleDrawing } from '../drawing/index.ts';
import { rangeOf, withHyphens } from './break-lines.ts';
import type { LineRange } from './break-lines.ts';
import { mustBreak, mustNotBreak, wordItem } from './line-items.ts';
import type { BoxItem, LineItem } from './line-items.ts';
import type { Setting } from './setting.ts';

const tolerance = 1e-6;

/**
 * Breaks items into lines with a ragged right edge: each line takes as many words as fit. A word
 * that is wider than the column is hyphenated, and where that does not do, broken anywhere, so
 * that no line ever leaves its column. A box that is no text (an equation) is made smaller.
 */
export function breakRagged(
  items: readonly LineItem[],
  width: number,
  setting: Setting,
): readonly LineRange[] {
  const broken = breakWideChunks(items, width, setting);
  const lines: LineRange[] = [];
  let from = 0;
  while (from < broken.length) {
    const to = endOfLine(broken, from, width);
    lines.push(rangeOf(broken, { from, to, ratio: 0 }));
    from = to + 1;
  }
  return lines;
}

/** Where the line ends that begins at `from`: the last legal place that fits, or the first there is. */
function endOfLine(items: readonly LineItem[], from: number, width: number): number {
  let used = 0;
  let best: number | undefined;
  let hasBox = false;
  for (let index = from; index < items.length; index += 1) {
    const item = items[index];
    if (item === undefined) break;
    if (canEndAt(items, index, hasBox)) {
      const isOver = used + hyphenWidth(item) > width + tolerance;
      if (isOver && best !== undefined) return best;
      if (isOver || isForced(item)) return index;
      best = index;
    }
    hasBox ||= item.type === 'box';
    // Spaces before the first word of a line take no room.
    if (hasBox && item.type !== 'penalty') used += item.width;
  }
  return items.length - 1;
}

/** A line ends at a legal break with something before it, or where it must. */
function canEndAt(items: readonly LineItem[], index: number, hasBox: boolean): boolean {
  const item = items[index];
  return (
    isLegalBreak(items, index) && (hasBox || (item !== undefined && isForced(item)))
  );
}

function hyphenWidth(item: LineItem): number {
  return item.type === 'penalty' ? item.width : 0;
}

function isForced(item: LineItem): boolean {
  return item.type === 'penalty' && item.cost <= mustBreak;
}

/** Glue behind a box, and a penalty that does not forbid it. */
function isLegalBreak(items: readonly LineItem[], index: number): boolean {
  const item = items[index];
  if (item?.type === 'penalty') return item.cost < mustNotBreak;
  return item?.type === 'glue' && items[index - 1]?.type === 'box';
}

/** The widest that cannot be broken, points: no column of a table should be narrower. */
export function widestChunk(items: readonly LineItem[]): number {
  return chunksOf(items).reduce((widest, { width }) => Math.max(widest, width), 0);
}

interface Chunk {
  readonly items: readonly LineItem[];
  readonly width: number;
}

/** Splits items at their legal breaks; each break (with what it is made of) is a chunk of no width. */
function chunksOf(items: readonly LineItem[]): readonly Chunk[] {
  const chunks: Chunk[] = [];
  let current: LineItem[] = [];
  let width = 0;
  const finish = (): void => {
    if (current.length > 0) chunks.push({ items: current, width });
    current = [];
    width = 0;
  };
  for (const [index, item] of items.entries()) {
    if (isLegalBreak(items, index)) {
      width += hyphenWidth(item);
      finish();
      chunks.push({ items: [item], width: 0 });
    } else {
      current.push(item);
      if (item.type !== 'penalty') width += item.width;
    }
  }
  finish();
  return chunks;
}

function breakWideChunks(
  items: readonly LineItem[],
  width: number,
  setting: Setting,
): readonly LineItem[] {
  const chunks = chunksOf(items);
  if (chunks.every((chunk) => chunk.width <= width)) return items;
  return chunks.flatMap((chunk) => {
    if (chunk.width <= width) return chunk.items;
    const hyphenated = withHyphens(chunk.items, setting);
    return widestChunk(hyphenated) <= width
      ? hyphenated
      : breakAnywhere(chunk.items, width, setting);
  });
}

/** Every character a box of its own, and a line may end between any two. */
function breakAnywhere(
  items: readonly LineItem[],
  width: number,
  setting: Setting,
): readonly LineItem[] {
  const loose = items
    .filter((item) => item.type !== 'penalty')
    .flatMap((item): readonly LineItem[] => {
      if (item.type !== 'box') return [item];
      if (item.word === undefined) return [shrunk(item, width)];
      const { look, text } = item.word;
      const { owner } = item;
      return Array.from(text, (letter) => wordItem(letter, look, { owner, setting }));
    });
  return loose.flatMap((item, index): readonly LineItem[] => {
    const follows =
      index > 0 && item.type === 'box' && loose[index - 1]?.type === 'box';
    const { owner } = item;
    const gap = { type: 'penalty', width: 0, cost: 0, flagged: false, owner } as const;
    return follows ? [gap, item] : [item];
  });
}

/** A box that is no text, made smaller where it is wider than a line. */
function shrunk(item: BoxItem, width: number): BoxItem {
  const factor = width / item.width;
  if (factor >= 1) return item;
  const { marks } = scaleDrawing({ width, height: 0, marks: item.marks }, factor);
  const { above, below } = item;
  return { ...item, width, marks, above: above * factor, below: below * factor };
}
