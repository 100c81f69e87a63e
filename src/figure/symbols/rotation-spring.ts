import type { PathStep } from '../../drawing/index.ts';
import type { Part } from '../ink/part.ts';
import { asOneBox, stroked, together } from '../ink/part.ts';
import { pin } from './pin.ts';
import type { SymbolFrame } from './symbol-frame.ts';

const turns = 1.5;
const stepsPerTurn = 16;

/** A pin that a spiral spring holds against turning. */
export function pinWithRotationSpring(frame: SymbolFrame): Part {
  return together(
    pin(frame),
    asOneBox(stroked(spiral(frame), { ...frame.outline, width: 0.6 })),
  );
}

/** A spiral about the pin, its outer end on the triangle. Fine enough chords pass for a curve. */
function spiral({ at }: SymbolFrame): readonly PathStep[] {
  const count = turns * stepsPerTurn;
  return Array.from({ length: count + 1 }, (_, index): PathStep => {
    const angle = Math.PI / 2 + (turns - index / stepsPerTurn) * 2 * Math.PI;
    const radius = 2 + (5.4 * index) / count;
    const { x, y } = at(radius * Math.cos(angle), radius * Math.sin(angle));
    return [index === 0 ? 'M' : 'L', x, y];
  });
}
