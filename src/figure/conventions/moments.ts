import { arcs, turningArrow } from '../ink/turning-arrow.ts';
import type { Turn } from '../ink/turning-arrow.ts';
import type { Sketch } from './sketch.ts';

/** A turning arrow round a plus: the turn that moments count positive in. */
export function sketchMoments(sketch: Sketch, turn: Turn): void {
  const centre = { x: 0, y: 0 };
  const style = sketch.arrows.load;
  sketch.draw(turningArrow(centre, 13, { arc: arcs['open-below'], turn, style }));
  sketch.letter('+', centre, 'on');
}
