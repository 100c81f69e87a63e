import type { Colour, Stroke } from '../../drawing/index.ts';
import type { Point } from '../geometry/point.ts';
import { directionOf } from '../geometry/point.ts';

/**
 * The little frame that a support symbol is drawn in, so that one drawing serves every slope:
 * `at(across, depth)` is the point `depth` away from the member, against the reaction, and
 * `across` to the side (to the right under an ordinary support). Points, before scaling.
 */
export interface SymbolFrame {
  readonly at: (across: number, depth: number) => Point;
  /** Symbols beside close neighbours are drawn smaller; 1 is full size. */
  readonly scale: number;
  /** Half the width of the ground under a pin, roller or spring; narrower beside close neighbours. */
  readonly groundHalf: number;
  readonly colour: Colour;
  readonly outline: Stroke;
  readonly fine: Stroke;
}

/** A frame at a point of the member; `normal` is the direction of the reaction, degrees from +x. */
export function symbolFrame(
  point: Point,
  normal: number,
  { scale = 1, colour }: { readonly scale?: number; readonly colour: Colour },
): SymbolFrame {
  const up = directionOf(normal);
  return {
    at: (across, depth) => ({
      x: point.x + (-up.y * across - up.x * depth) * scale,
      y: point.y + (up.x * across - up.y * depth) * scale,
    }),
    scale,
    groundHalf: scale < 1 ? 6 : 9.5,
    colour,
    outline: { width: 0.8, colour, join: 'miter' },
    fine: { width: 0.45, colour },
  };
}
