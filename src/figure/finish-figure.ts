import type { Drawing } from '../drawing/index.ts';
import type { Box } from './geometry/box.ts';
import { moveBox } from './geometry/box.ts';
import type { Strip } from './strip.ts';
import { boundsOf } from './strip.ts';

/** A figure with the boxes of what is on it, for those who check that nothing covers anything. */
export interface LaidFigure {
  readonly drawing: Drawing;
  readonly labels: readonly Box[];
  /** Everything drawn that a label could hide: lines, arrows, symbols, curves. */
  readonly obstacles: readonly Box[];
}

/** Room above and below everything drawn, points. */
const padding = 1;

/** Makes a strip into a drawing, as high as its content. */
export function finishFigure(
  strip: Strip,
  { width, alternate }: { readonly width: number; readonly alternate: string },
): LaidFigure {
  const { top, bottom } = boundsOf(strip) ?? { top: 0, bottom: 0 };
  const down = padding - top;
  return {
    drawing: {
      width,
      height: bottom - top + 2 * padding,
      marks: [{ kind: 'group', x: 0, y: down, marks: strip.marks }],
      alternate,
    },
    labels: strip.labels.map((box) => moveBox(box, 0, down)),
    obstacles: strip.obstacles.map((box) => moveBox(box, 0, down)),
  };
}
