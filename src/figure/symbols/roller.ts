import type { Part } from '../ink/part.ts';
import { asOneBox, stroked, together } from '../ink/part.ts';
import { circlePath } from '../ink/paths.ts';
import { ground } from './ground.ts';
import { groundDepth } from './pin.ts';
import type { SymbolFrame } from './symbol-frame.ts';

/** A roller: a circle on hatched ground, square to its reaction. */
export function roller(frame: SymbolFrame): Part {
  const { at, outline, scale } = frame;
  const top = 1.1;
  const radius = (groundDepth - 0.4 - top) / 2;
  const circle = circlePath(at(0, top + radius), radius * scale);
  return together(
    asOneBox(stroked(circle, outline)),
    ground(frame, groundDepth, frame.groundHalf),
  );
}
