import type { Colour } from '../../drawing/index.ts';
import type { Point } from '../geometry/point.ts';
import type { Part } from '../ink/part.ts';
import { filled } from '../ink/part.ts';
import { circlePath } from '../ink/paths.ts';

const paper: Colour = [1, 1, 1];

/** An internal hinge: a small open circle on the member. */
export function hinge(point: Point, colour: Colour): Part {
  return filled(circlePath(point, 2.1), paper, { width: 0.8, colour });
}
