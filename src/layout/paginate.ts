import { gapBetween } from './band.ts';
import type { Band } from './band.ts';

/** The bands of one page: those from `from` up to but without `to`. */
export interface PageRange {
  readonly from: number;
  readonly to: number;
}

// Costs are in one currency: what a page costs that is left empty, as the square of the share left
// empty times `emptyCost`; a page left a tenth empty costs 2.5, one left half empty 62.
const emptyCost = 250;
const leastFilled = 1 / 3;
const underfullCost = 2000;
// Each page has a price, so that of two ways to fill them the shorter wins.
const pagePrice = 4;
// The first line that sticks out of a page costs more than any number of forbidden breaks.
const overfullCost = 1e10;
const tolerance = 1e-6;

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

/** A band as pagination sees it, measured on one endless page. */
interface Measured {
  /** Where a page ends that ends with this band. */
  readonly foot: number;
  /** Where a page begins that begins with this band, what it repeats included. */
  readonly start: number;
  readonly breakBefore: number;
}

function bestSteps(bands: readonly Band[], height: number): readonly Step[] {
  const measured = measure(bands);
  const steps: Step[] = [{ cost: 0, from: 0 }];
  for (let to = 1; to <= measured.length; to += 1)
    steps.push(bestStepTo(to, measured, steps, height));
  return steps;
}

/** The cheapest way to break the bands before a place, and to end a page there. */
function bestStepTo(
  to: number,
  measured: readonly Measured[],
  steps: readonly Step[],
  height: number,
): Step {
  const { foot } = measured[to - 1] ?? nothing;
  const next = measured[to];
  let best: Step = { cost: Infinity, from: to - 1 };
  for (let from = to - 1; from >= 0; from -= 1) {
    const used = foot - (measured[from] ?? nothing).start;
    // Pages only grow when they begin earlier: the first too tall ends the search.
    if (used > height + tolerance && best.cost < Infinity) break;
    const cost =
      (steps[from] ?? best).cost + pageCost(used, height, next === undefined);
    if (cost < best.cost) best = { cost, from };
  }
  return { from: best.from, cost: best.cost + (next ?? nothing).breakBefore };
}

const nothing: Measured = { foot: 0, start: 0, breakBefore: 0 };

/** What a page costs that is filled up to `used`; the last of a part may be as empty as it likes. */
function pageCost(used: number, height: number, isLast: boolean): number {
  if (used > height + tolerance) return pagePrice + overfullCost * (used / height);
  if (isLast) return pagePrice;
  const empty = 1 - used / height;
  const underfull = used < leastFilled * height ? underfullCost : 0;
  return pagePrice + emptyCost * empty ** 2 + underfull;
}

function measure(bands: readonly Band[]): readonly Measured[] {
  let y = 0;
  return bands.map((band, index): Measured => {
    const before = bands[index - 1];
    const top = before === undefined ? y : y + gapBetween(before, band);
    y = top + band.height;
    const repeated = (band.repeats ?? []).reduce((sum, { height }) => sum + height, 0);
    return {
      foot: y + (band.closing ?? 0),
      start: before === undefined ? top : (band.isGap ? y : top) - repeated,
      breakBefore: band.breakBefore,
    };
  });
}
