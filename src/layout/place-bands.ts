import { gapBetween } from './band.ts';
import type { Band } from './band.ts';
import type { PageRange } from './paginate.ts';

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
  const repeated = from === 0 ? [] : repeatsOf(bands[from]);
  const placed: PlacedBand[] = [];
  let y = 0;
  let above: Band | undefined;
  for (const band of [...repeated, ...bands.slice(from, to)]) {
    // What is repeated stands close: its bands and the first of the page have no gaps between.
    if (above !== undefined && placed.length > repeated.length)
      y += gapBetween(above, band);
    placed.push({ band, y });
    const isDropped = from > 0 && above === undefined && band.isGap === true;
    if (!isDropped) y += band.height;
    above = band;
  }
  return placed;
}

/** What a band repeats above it, framed as the band itself is. */
function repeatsOf(band: Band | undefined): readonly Band[] {
  const { repeats = [], frames = [] } = band ?? {};
  return repeats.map((repeat) => ({ ...repeat, frames }));
}
