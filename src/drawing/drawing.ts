import type { Mark } from './marks.ts';

/**
 * A finished drawing: marks at fixed places in a box of known size. Points (1/72 in), origin at
 * the box's top left, x to the right, y down. Layout ends in drawings; nothing after it decides
 * where a mark goes.
 */
export interface Drawing {
  readonly width: number;
  readonly height: number;
  /** Distance of the first baseline from the top; absent where the drawing has none. */
  readonly baseline?: number;
  /** Distance of the last baseline from the top, where lines stand below each other. */
  readonly lastBaseline?: number;
  readonly marks: readonly Mark[];
  /** What the drawing says, for someone who cannot see it. */
  readonly alternate?: string;
}
