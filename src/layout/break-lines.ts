import linebreak from 'tex-linebreak';
import { mustBreak, wordItem } from './line-items.ts';
import type { BoxItem, GlueItem, LineItem, PenaltyItem } from './line-items.ts';
import type { Setting } from './setting.ts';

/** One line of items: those from `from` up to but without `to`, and what ends it. */
export interface LineRange {
  readonly items: readonly LineItem[];
  /** The penalty that the line ends at, where it ends at one. */
  readonly end: PenaltyItem | undefined;
  /** The space that the line ends at, where it ends at one: it is drawn, though it takes no room. */
  readonly lastSpace: GlueItem | undefined;
  /** The share of each space's stretch (positive) or shrink (negative) that fills the line. */
  readonly ratio: number;
}

// Spaces of up to .43 em are taste, of up to .6 em better than a ragged line (TeX: \tolerance).
const firstTolerance = 1.2;
const lastTolerance = 2.3;
const hyphenCost = 60;

/**
 * Breaks items into justified lines by Knuth and Plass, "Breaking Paragraphs into Lines" (Software,
 * Practice and Experience 11, 1981): first without hyphens, then with. Undefined where even then
 * a line would have to be stretched beyond taste or would not fit.
 */
export function breakJustified(
  items: readonly LineItem[],
  width: number,
  setting: Setting,
): readonly LineRange[] | undefined {
  return (
    attempt(items, width, firstTolerance) ??
    attempt(withHyphens(items, setting), width, lastTolerance)
  );
}

function attempt(
  items: readonly LineItem[],
  width: number,
  tolerance: number,
): readonly LineRange[] | undefined {
  // The library asks for arrays that it could change; it does not change them.
  const input = items as LineItem[];
  try {
    const breaks = linebreak.breakLines(input, width, {
      initialMaxAdjustmentRatio: tolerance,
      maxAdjustmentRatio: tolerance,
      doubleHyphenPenalty: 3000,
      adjacentLooseTightPenalty: 1500,
    });
    const ratios = linebreak.adjustmentRatios(input, width, breaks);
    if (ratios.some((ratio) => ratio < -1.001)) return undefined;
    return ratios.map((ratio, line) => {
      const from = line === 0 ? -1 : (breaks[line] ?? 0);
      return rangeOf(items, { from: from + 1, to: breaks[line + 1] ?? 0, ratio });
    });
  } catch (fault) {
    if (fault instanceof linebreak.MaxAdjustmentExceededError) return undefined;
    throw fault;
  }
}

interface RangePlace {
  readonly from: number;
  readonly to: number;
  readonly ratio: number;
}

/** The line between two breaks: spaces at its start are dropped, as is what only breaks serve. */
export function rangeOf(
  items: readonly LineItem[],
  { from, to, ratio }: RangePlace,
): LineRange {
  let start = from;
  while (start < to && items[start]?.type !== 'box') {
    const item = items[start];
    if (item?.type === 'penalty' && item.cost <= mustBreak) break;
    start += 1;
  }
  const last = items[to];
  return {
    items: items.slice(start, to),
    end: last?.type === 'penalty' ? last : undefined,
    lastSpace: last?.type === 'glue' ? last : undefined,
    ratio: Number.isFinite(ratio) ? ratio : 0,
  };
}

/** The same items with every place where a word may be hyphenated. */
export function withHyphens(
  items: readonly LineItem[],
  setting: Setting,
): readonly LineItem[] {
  return items.flatMap((item): readonly LineItem[] =>
    item.type === 'box' && item.word !== undefined
      ? hyphenated(item, item.word, setting)
      : [item],
  );
}

function hyphenated(
  item: BoxItem,
  { text, look }: NonNullable<BoxItem['word']>,
  setting: Setting,
): readonly LineItem[] {
  const pieces = setting.hyphenate(text);
  if (pieces.length < 2) return [item];
  const { owner } = item;
  const { width } = setting.words.inLook(look)('-');
  const hyphen = {
    type: 'penalty',
    width,
    cost: hyphenCost,
    flagged: true,
    hyphen: look,
    owner,
  } as const;
  return pieces.flatMap((piece, index): readonly LineItem[] => {
    const box = wordItem(piece, look, { owner, setting });
    return index === 0 ? [box] : [hyphen, box];
  });
}
