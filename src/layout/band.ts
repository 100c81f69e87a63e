import type { Mark } from '../drawing/index.ts';
import type { ElementNode } from './element-node.ts';

/** Marks of one element at a place; `layout` marks (rules, line numbers) are no part of the text. */
export interface Piece {
  readonly of: ElementNode | 'layout';
  readonly x: number;
  readonly y: number;
  readonly marks: readonly Mark[];
}

/** A note beside a band, in the margin column; its y of its pieces is measured from the note's top. */
export interface MarginNote {
  /** Where the note would like its top to stand, from the band's top; positive down. */
  readonly y: number;
  readonly height: number;
  readonly pieces: readonly Piece[];
}

/**
 * Something drawn round or beside a run of bands, per page: a box ruled all round, or a bar at
 * the left. Bands name their frames by identity; on a page the frame reaches from the top of the
 * first band that names it to the foot of the last.
 */
export interface Frame {
  readonly kind: 'box' | 'bar';
  readonly x: number;
  readonly width: number;
}

/**
 * A band of the column: as wide as the column, never split, the unit that pages are made of.
 * Points; x is measured from the left edge of the text column of the page, y down from the band's top.
 */
export interface Band {
  readonly height: number;
  /** First baseline from the top: where a list's label or a margin note lines up. */
  readonly baseline?: number;
  /** Room wanted above and below; of two neighbours the greater counts, at a page's edge none. */
  readonly above: number;
  readonly below: number;
  /** What it costs to begin a page with this band (see paginate); `neverBreak` where it must not. */
  readonly breakBefore: number;
  readonly pieces: readonly Piece[];
  readonly notes?: readonly MarginNote[];
  readonly anchors?: readonly string[];
  /** Bands set again above this one where it begins a page: a table's head, a box's padding. */
  readonly repeats?: readonly Band[];
  /** Room kept free below, and framed, where a page ends with this band (a box's padding). */
  readonly closing?: number;
  readonly frames?: readonly Frame[];
  /** A gap between others: it takes no room where it would begin a page, but for a part's first. */
  readonly isGap?: boolean;
  /** Differs from the revision before: a bar stands beside it. */
  readonly isChanged?: boolean;
}

/** The cost of a break that must not be made unless a page cannot be filled otherwise. */
export const neverBreak = 1e7;

/** The room that stands between two neighbours. */
export function gapBetween(upper: Band, lower: Band): number {
  return Math.max(upper.below, lower.above);
}

/** Height of bands stacked with their gaps, nothing above the first or below the last. */
export function heightOfBands(bands: readonly Band[]): number {
  return bands.reduce((total, band, index) => {
    const before = bands[index - 1];
    return total + band.height + (before === undefined ? 0 : gapBetween(before, band));
  }, 0);
}

/** The same bands, all of them new since the revision before. */
export function barred(bands: readonly Band[]): readonly Band[] {
  return bands.map((band) => ({ ...band, isChanged: true }));
}

/** The same bands with the first changed. */
export function changeFirst(
  bands: readonly Band[],
  change: (band: Band) => Band,
): readonly Band[] {
  return bands.map((band, index) => (index === 0 ? change(band) : band));
}

/** The same bands with the last changed. */
export function changeLast(
  bands: readonly Band[],
  change: (band: Band) => Band,
): readonly Band[] {
  return bands.map((band, index) => (index === bands.length - 1 ? change(band) : band));
}

const blank: Band = { height: 0, above: 0, below: 0, breakBefore: 0, pieces: [] };

/** The same bands with an anchor at their top; where there are none, a band of no height holds it. */
export function anchorBands(bands: readonly Band[], anchor: string): readonly Band[] {
  return changeFirst(bands.length === 0 ? [blank] : bands, (band) => ({
    ...band,
    anchors: [anchor, ...(band.anchors ?? [])],
  }));
}
