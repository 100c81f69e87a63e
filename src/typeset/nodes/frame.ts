import type { PathStep } from '../../drawing/index.ts';
import { readColour } from '../colours.ts';
import type { NodeSetter } from '../node-setter.ts';
import { rectangle } from './rectangle.ts';

/** A box as wide as its line, its border inside its outer edge. */
export const setFrame: NodeSetter<'frame'> = (node, own) => {
  const { scale, colour } = own;
  const border = node.border === undefined ? colour : readColour(node.border);
  const fill = node.background === undefined ? undefined : readColour(node.background);
  const thickness = node.thickness * scale;
  const tall = node.tall * scale;
  return {
    width: 0,
    fills: true,
    place: (pen, x, y, width) => {
      if (colour === undefined) return;
      const half = thickness / 2;
      const top = y - tall + half;
      const path: readonly PathStep[] =
        node.sides === 'all'
          ? rectangle(x + half, top, width - thickness, tall - thickness)
          : [
              ['M', x, top],
              ['L', x + width - half, top],
              ['L', x + width - half, y],
            ];
      pen.shape(path, {
        ...(fill === undefined ? {} : { fill }),
        ...(thickness > 0 && border !== undefined
          ? { stroke: { width: thickness, colour: border } }
          : {}),
      });
    },
  };
};
