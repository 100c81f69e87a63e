import type { NodeSetter } from '../node-setter.ts';
import { dashedStroke } from './bar.ts';
import { rectangle } from './rectangle.ts';

/** A vertical line between columns, centred on its place and taking no room there. */
export const setSeparator: NodeSetter<'separator'> = (node, own) => {
  const { scale, colour } = own;
  const thickness = node.thickness * scale;
  return {
    width: 0,
    fills: false,
    place: (pen, x, y) => {
      if (colour === undefined) return;
      const foot = y + node.below * scale;
      const top = foot - node.tall * scale;
      if (node.isDashed) {
        pen.shape(
          [
            ['M', x, top],
            ['L', x, foot],
          ],
          { stroke: dashedStroke(thickness, colour) },
        );
      } else {
        pen.shape(rectangle(x - thickness / 2, top, thickness, foot - top), {
          fill: colour,
        });
      }
    },
  };
};
