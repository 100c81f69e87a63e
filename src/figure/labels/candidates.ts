import type { Box } from '../geometry/box.ts';
import { boxAt } from '../geometry/box.ts';
import type { Point } from '../geometry/point.ts';

/** The width and height of a label, points. */
export interface Size {
  readonly width: number;
  readonly height: number;
}

/** A place of a label beside a point: by the compass, as on a map with north at the top. */
export type Side = 'n' | 'ne' | 'e' | 'se' | 's' | 'sw' | 'w' | 'nw';

/** How far a label stands from its point, sideways and up or down. */
export interface Gap {
  readonly x: number;
  readonly y: number;
}

/** A label's box beside a point, `gap` away from it. */
export function besidePoint(point: Point, side: Side, size: Size, gap: Gap): Box {
  const { width, height } = size;
  const toLeft = side.includes('e')
    ? gap.x
    : side.includes('w')
      ? -gap.x - width
      : -width / 2;
  const toTop = side.includes('s')
    ? gap.y
    : side.includes('n')
      ? -gap.y - height
      : -height / 2;
  return boxAt(point.x + toLeft, point.y + toTop, size);
}

/** The places beside a point in order of preference: every side at the first gap, then at the next. */
export function aroundPoint(
  point: Point,
  size: Size,
  { sides, gaps }: { readonly sides: readonly Side[]; readonly gaps: readonly Gap[] },
): readonly Box[] {
  return gaps.flatMap((gap) =>
    sides.map((side) => besidePoint(point, side, size, gap)),
  );
}

/** The box pushed sideways, as little as needed, to lie between two bounds. */
export function holdBetween(
  box: Box,
  { left, right }: { readonly left: number; readonly right: number },
): Box {
  const dx = Math.max(left - box.left, Math.min(0, right - box.right));
  return { ...box, left: box.left + dx, right: box.right + dx };
}
