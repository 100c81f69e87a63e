import type { NodeSetter } from '../node-setter.ts';
import { rectangle } from './rectangle.ts';

/** A rule of its own size; a rule without area (a strut) draws nothing. */
export const setRule: NodeSetter<'rule'> = (node, own) => {
  const { scale, colour } = own;
  const width = node.width * scale;
  const tall = node.tall * scale;
  return {
    width,
    fills: false,
    place: (pen, x, y) => {
      if (colour === undefined || width <= 0 || tall <= 0) return;
      const top = y - (node.raise + node.tall) * scale;
      pen.shape(rectangle(x, top, width, tall), { fill: colour });
    },
  };
};
