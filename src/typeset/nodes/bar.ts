import type { Colour } from '../../drawing/index.ts';
import type { NodeSetter } from '../node-setter.ts';
import { rectangle } from './rectangle.ts';

/** Length of a dash and of the gap after it, over the thickness of the line. */
const dashes: readonly number[] = [4, 3];

/** A stroke along the middle of a dashed line of that thickness. */
export function dashedStroke(
  thickness: number,
  colour: Colour,
): {
  readonly width: number;
  readonly colour: Colour;
  readonly dash: readonly number[];
} {
  return { width: thickness, colour, dash: dashes.map((length) => length * thickness) };
}

/** A rule as wide as its line, its lower edge on the line's baseline. */
export const setBar: NodeSetter<'bar'> = (node, own) => {
  const thickness = node.thickness * own.scale;
  const { colour } = own;
  return {
    width: 0,
    fills: true,
    place: (pen, x, y, width) => {
      if (colour === undefined || width <= 0) return;
      if (node.isDashed) {
        const middle = y - thickness / 2;
        const stroke = dashedStroke(thickness, colour);
        pen.shape(
          [
            ['M', x, middle],
            ['L', x + width, middle],
          ],
          { stroke },
        );
      } else {
        pen.shape(rectangle(x, y - thickness, width, thickness), { fill: colour });
      }
    },
  };
};
