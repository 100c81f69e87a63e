import { gapBetween, neverBreak } from './band.ts';
import type { Band } from './band.ts';

/** The bands of one page: those from `from` up to but without `to`. */
export interface PageRange {
  readonly from: number;
  readonly to: number;
}

// Costs are in one currency: what a page costs that is left empty, as the square of the share left
// empty times `emptyCost`; a page left a tenth empty costs 1, one left half empty 25.
const emptyCost = 100;
const leastFilled = 1 / 3;
const underfullCost = 2000;
// Each page has a price, so that of two ways to fill them the shorter wins.
const pagePrice = 4;
// The first line that sticks out of a page costs more than any number of forbidden breaks.
const overfullCost = 1e10;

/**
 * Breaks the bands of a part into pages, all at once: of all ways to break them the one that
 * costs least, as Plass, "Optimal Pagination Techniques for Automatic Typesetting Systems"
 * (Stanford 1981) does for pages what Knuth and Plass do for lines. A page is never stretched;
 * what is left empty at its foot stays empty.
 *
 * The best way to break what stands before a place does not depend on what follows it. So where
 * two documents begin alike and both begin a page at some band, the pages before are the same.
 */
export function paginate(bands: readonly Band[], height: number): readonly PageRange[] {
  if (bands.length === 0) return [];
  const steps = bestSteps(bands, height);
  const pages: PageRange[] = [];
  for (let to = bands.length; to > 0;) {
    const from = steps[to]?.from ?? 0;
    pages.push({ from, to });
    to = from;
  }
  return pages.reverse();
}

interface Step {
  readonly cost: number;
  /** Where the last page begins of the best way to break the bands before this place. */
  readonly from: number;
}

function bestSteps(bands: readonly Band[], height: number): readonly Step[] {
  const tops = measureTops(bands);
  const extra = bands.map((band) => repeatedHeight(band));
  const steps: Step[] = [{ cost: 0, from: 0 }];
  for (let to = 1; to <= bands.length; to += 1) {
    let best: Step | undefined;
    const last = bands[to - 1];
    const foot = (tops[to - 1] ?? 0) + (last?.height ?? 0) + (last?.closing ?? 0);
    for (let from = to - 1; from >= 0; from -= 1) {
      const used = foot - (tops[from] ?? 0) + (from === 0 ? 0 : (extra[from] ?? 0));
      // Pages only grow when they begin earlier: the first too tall ends the search.
      if (used > height + 1e-6 && best !== undefined) break;
      const next = bands[to];
      const cost =
        (steps[from]?.cost ?? 0) +
        pageCost({ used, height, isLast: next === undefined }) +
        (next?.breakBefore ?? 0);
      if (best === undefined || cost < best.cost) best = { cost, from };
    }
    steps.push(best ?? { cost: 0, from: to - 1 });
  }
  return steps;
}

interface PageFill {
  readonly used: number;
  readonly height: number;
  readonly isLast: boolean;
}

function pageCost({ used, height, isLast }: PageFill): number {
  if (used > height + 1e-6) return pagePrice + overfullCost * (used / height);
  if (isLast) return pagePrice;
  const empty = 1 - used / height;
  const underfull = used < leastFilled * height ? underfullCost : 0;
  return pagePrice + emptyCost * empty ** 2 + underfull;
}

/** Top of every band where all stand on one endless page. */
function measureTops(bands: readonly Band[]): readonly number[] {
  const tops: number[] = [];
  let y = 0;
  for (const [index, band] of bands.entries()) {
    const before = bands[index - 1];
    if (before !== undefined) y += gapBetween(before, band);
    tops.push(y);
    y += band.height;
  }
  return tops;
}

/** Height of what is repeated above a band that begins a page. */
function repeatedHeight(band: Band): number {
  return (band.repeats ?? []).reduce((sum, repeat) => sum + repeat.height, 0);
}

/** A band at its place on a page, y from the top of the text area. */
export interface PlacedBand {
  readonly band: Band;
  readonly y: number;
}

/** Places the bands of a page from the top down, with what is repeated above the first. */
export function placeBands(
  bands: readonly Band[],
  { from, to }: PageRange,
): readonly PlacedBand[] {
  const placed: PlacedBand[] = [];
  let y = 0;
  const repeats = from === 0 ? [] : (bands[from]?.repeats ?? []);
  for (const band of repeats) {
    placed.push({ band: { ...band, frames: bands[from]?.frames ?? [] }, y });
    y += band.height;
  }
  for (let index = from; index < to; index += 1) {
    const band = bands[index];
    const before = bands[index - 1];
    if (band === undefined) continue;
    if (index > from && before !== undefined) y += gapBetween(before, band);
    placed.push({ band, y });
    y += band.height;
  }
  return placed;
}

/** True where a page must not begin with the band. */
export function isTied(band: Band): boolean {
  return band.breakBefore >= neverBreak;
}
