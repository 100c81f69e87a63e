import { arrow } from '../ink/arrow.ts';
import { element, elementHalf } from './element.ts';
import type { Sketch } from './sketch.ts';

/** Axial force: two pulls on a piece of the member, tension. */
export function sketchAxial(sketch: Sketch): void {
  sketch.draw(element(sketch));
  for (const side of [-1, 1]) {
    const tail = { x: side * (elementHalf.length + 2), y: 0 };
    const tip = { x: tail.x + side * 17, y: 0 };
    sketch.draw(arrow(tail, tip, sketch.arrows.load));
    sketch.letter('N', { x: (tail.x + tip.x) / 2, y: -1 }, 'n');
  }
}
