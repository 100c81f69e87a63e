import type { Stroke } from '../../drawing/index.ts';
import type { Box } from '../geometry/box.ts';
import type { Part } from './part.ts';
import { stroked, together } from './part.ts';
import { linePath } from './paths.ts';

/** A stretch of an upright line. */
export interface Stretch {
  readonly top: number;
  readonly bottom: number;
}

/** A broken line keeps this far from what it makes way for, and pieces shorter than this are left out, points. */
const clearance = 1.4;
const shortest = 0.8;

/** The stretches of an upright line that are left when it makes way for boxes. */
export function breakUpright(
  x: number,
  { top, bottom }: Stretch,
  gaps: readonly Box[],
): readonly Stretch[] {
  const breaks = gaps
    .filter((box) => box.left - clearance < x && box.right + clearance > x)
    .map((box) => ({ top: box.top - clearance, bottom: box.bottom + clearance }))
    .sort((a, b) => a.top - b.top);
  const left: Stretch[] = [];
  let at = top;
  for (const gap of breaks) {
    if (gap.bottom <= at) continue;
    left.push({ top: at, bottom: Math.min(gap.top, bottom) });
    at = gap.bottom;
  }
  left.push({ top: at, bottom });
  return left.filter((stretch) => stretch.bottom - stretch.top >= shortest);
}

/** An upright line that makes way for boxes. */
export function brokenUpright(
  x: number,
  stretch: Stretch,
  { gaps, stroke }: { readonly gaps: readonly Box[]; readonly stroke: Stroke },
): Part {
  const lines = breakUpright(x, stretch, gaps).map(({ top, bottom }) =>
    stroked(linePath({ x, y: top }, { x, y: bottom }), stroke),
  );
  return together(...lines);
}
