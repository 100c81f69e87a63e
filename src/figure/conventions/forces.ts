import { arrow } from '../ink/arrow.ts';
import { filled } from '../ink/part.ts';
import { circlePath } from '../ink/paths.ts';
import type { Sketch } from './sketch.ts';

/** Length of the arrows, points. */
const length = 26;

/** The axes, each with its letter, and a plus at the side that forces count positive to. */
export function sketchForces(
  sketch: Sketch,
  {
    horizontal,
    vertical,
  }: { readonly horizontal: 'right' | 'left'; readonly vertical: 'up' | 'down' },
): void {
  const toRight = horizontal === 'right' ? 1 : -1;
  const toTop = vertical === 'up' ? -1 : 1;
  const origin = { x: (-toRight * length) / 2, y: (-toTop * length) / 2 };
  const right = { x: origin.x + toRight * length, y: origin.y };
  const top = { x: origin.x, y: origin.y + toTop * length };
  const style = sketch.arrows.load;
  sketch.draw(filled(circlePath(origin, 1.2), style.colour));
  sketch.draw(arrow(origin, right, style));
  sketch.draw(arrow(origin, top, style));
  sketch.letter('x', right, toRight > 0 ? 'e' : 'w');
  sketch.letter('y', top, toTop < 0 ? 'n' : 's');
  const middle = (from: number, to: number): number => (from + to) / 2;
  sketch.letter('+', { x: middle(origin.x, right.x), y: origin.y }, 'n');
  sketch.letter(
    '+',
    { x: origin.x, y: middle(origin.y, top.y) },
    toRight > 0 ? 'w' : 'e',
  );
}
