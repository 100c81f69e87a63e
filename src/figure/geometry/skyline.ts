import type { Box } from './box.ts';

/** The side of the member that labels are stacked on, away from it. */
export type Outward = 'up' | 'down';

/**
 * How far outward anything reaches between two x: the least top (up) or greatest bottom (down) of
 * the boxes there, `none` where there is nothing.
 */
export function skyline(
  boxes: readonly Box[],
  { left, right }: { readonly left: number; readonly right: number },
  { outward, none }: { readonly outward: Outward; readonly none: number },
): number {
  const over = boxes.filter((box) => box.left < right && box.right > left);
  return outward === 'up'
    ? Math.min(none, ...over.map(({ top }) => top))
    : Math.max(none, ...over.map(({ bottom }) => bottom));
}
