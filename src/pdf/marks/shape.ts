import type { PathStep, ShapeMark } from '../../drawing/index.ts';
import { formatNumbers } from '../format-number.ts';
import type { Box } from './box.ts';
import { joinBoxes } from './box.ts';
import { own } from './own.ts';
import type { PagePen, Surroundings } from './page-pen.ts';

/** Draws a path, filled (non-zero winding), stroked or both. */
export function drawShape(
  { path, fill, stroke }: ShapeMark,
  around: Surroundings,
  pen: PagePen,
): void {
  if (path.length === 0 || (fill === undefined && stroke === undefined)) return;
  own(around, pen, extentOf(path, around, stroke?.width ?? 0));
  if (fill !== undefined) pen.content.fillWith(fill);
  if (stroke !== undefined) pen.content.strokeWith(stroke);
  const right = around.x;
  const top = pen.height - around.y;
  const steps = path.map((step) => printStep(step, right, top)).join(' ');
  pen.content.add(`${steps} ${painting(fill !== undefined, stroke !== undefined)}`);
}

function painting(isFilled: boolean, isStroked: boolean): string {
  if (isFilled) return isStroked ? 'B' : 'f';
  return 'S';
}

/** One step of a path from an origin given in the page's coordinates, y there growing upward. */
function printStep(step: PathStep, x: number, y: number): string {
  switch (step[0]) {
    case 'M':
      return `${formatNumbers(x + step[1], y - step[2])} m`;
    case 'L':
      return `${formatNumbers(x + step[1], y - step[2])} l`;
    case 'C': {
      const [, x1, y1, x2, y2, x3, y3] = step;
      return `${formatNumbers(x + x1, y - y1, x + x2, y - y2, x + x3, y - y3)} c`;
    }
    case 'Z':
      return 'h';
  }
}

/** A rectangle around a path: its points and control points, and half the stroke beyond. */
function extentOf(
  path: readonly PathStep[],
  { x, y }: Surroundings,
  strokeWidth: number,
): Box | undefined {
  const half = strokeWidth / 2;
  let extent: Box | undefined;
  for (const [, ...numbers] of path) {
    for (let index = 0; index + 1 < numbers.length; index += 2) {
      const across = x + (numbers[index] ?? 0);
      const down = y + (numbers[index + 1] ?? 0);
      extent = joinBoxes(extent, {
        left: across - half,
        right: across + half,
        top: down - half,
        bottom: down + half,
      });
    }
  }
  return extent;
}
