import type { Part } from '../ink/part.ts';
import { asOneBox, stroked, together } from '../ink/part.ts';
import { linePath } from '../ink/paths.ts';
import type { SymbolFrame } from './symbol-frame.ts';

/** How far hatch strokes reach into the ground, and how far apart they stand, points. */
const reach = 3.4;
const pitch = 3.2;

/** What does not move: a line across the frame at a depth, with short slanted strokes behind it. */
export function ground(frame: SymbolFrame, depth: number, halfWidth: number): Part {
  return groundBetween(frame, depth, { from: -halfWidth, to: halfWidth });
}

/** The same from one place across the frame to another. */
export function groundBetween(
  { at, outline, fine }: SymbolFrame,
  depth: number,
  { from, to }: { readonly from: number; readonly to: number },
): Part {
  const count = Math.max(2, Math.round((to - from) / pitch));
  const step = (to - from) / count;
  const strokes = Array.from({ length: count }, (_, index) => {
    const across = from + (index + 1) * step - step * 0.15;
    return stroked(
      linePath(at(across, depth), at(across - reach, depth + reach)),
      fine,
    );
  });
  return asOneBox(
    together(stroked(linePath(at(from, depth), at(to, depth)), outline), ...strokes),
  );
}
