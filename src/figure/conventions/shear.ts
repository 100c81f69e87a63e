import { arrow } from '../ink/arrow.ts';
import { element, elementHalf } from './element.ts';
import type { Sketch } from './sketch.ts';

/** Shear force: up on the left face of a piece of the member, down on its right face. */
export function sketchShear(sketch: Sketch): void {
  sketch.draw(element(sketch));
  for (const side of [-1, 1]) {
    const x = side * (elementHalf.length + 4.5);
    // Up on the left: the tail lies below.
    const tail = { x, y: -side * 11 };
    const tip = { x, y: side * 11 };
    sketch.draw(arrow(tail, tip, sketch.arrows.load));
    sketch.letter('V', { x: x + side, y: 0 }, side < 0 ? 'w' : 'e');
  }
}
