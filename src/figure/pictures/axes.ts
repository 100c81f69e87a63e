import { arrowStyles } from '../figure-setting.ts';
import type { FigureSetting } from '../figure-setting.ts';
import type { Label } from '../figure-spec.ts';
import { boxAt } from '../geometry/box.ts';
import { arrow } from '../ink/arrow.ts';
import { openBoard } from '../board.ts';
import type { Strip } from '../strip.ts';
import { setSmall } from '../labels/small-label.ts';

/** Length of an axis, and the width that the axes take with their letters, points. */
const axisLength = 15;
export const axesWidth: number = 27;

/** Small x and y axes, their origin at the bottom left; y = 0 is the x axis. */
export function layAxes(setting: FigureSetting): Strip {
  const board = openBoard();
  const style = { ...arrowStyles(setting.theme).row, headLength: 4.2 };
  const origin = { x: 4, y: 0 };
  const right = { x: origin.x + axisLength, y: 0 };
  const up = { x: origin.x, y: -axisLength };
  board.draw(arrow(origin, right, style));
  board.draw(arrow(origin, up, style));
  const x = setSmall(axis('x'), setting);
  const y = setSmall(axis('y'), setting);
  board.write(x, boxAt(right.x + 2, -x.height / 2, x));
  board.write(y, boxAt(up.x - y.width / 2, up.y - 1.8 - y.height, y));
  return board.strip();
}

function axis(letter: 'x' | 'y'): Label {
  const symbol = { letter, meaning: `the ${letter} axis` };
  return { kind: 'expression', expression: { kind: 'name', symbol } };
}
