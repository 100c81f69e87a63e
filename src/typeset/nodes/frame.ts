import type { PathStep } from '../../drawing/index.ts';
import { readColour } from '../colours.ts';
import type { NodeSetter } from '../node-setter.ts';
import { rectangle } from './rectangle.ts';

/** A box as wide as its line, its border inside its outer edge, its foot on the baseline. */
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
      if (node.sides === 'top-right') {
        if (border === undefined) return;
        pen.shape(corner(x, y, { width, tall, thickness }), { fill: border });
        return;
      }
      const half = thickness / 2;
      const path = rectangle(
        x + half,
        y - tall + half,
        width - thickness,
        tall - thickness,
      );
      pen.shape(path, {
        ...(fill === undefined ? {} : { fill }),
        ...(thickness > 0 && border !== undefined
          ? { stroke: { width: thickness, colour: border } }
          : {}),
      });
    },
  };
};

interface Edge {
  readonly width: number;
  readonly tall: number;
  readonly thickness: number;
}

/** The upper and the right side of a box as one outline. */
function corner(
  x: number,
  y: number,
  { width, tall, thickness }: Edge,
): readonly PathStep[] {
  const right = x + width;
  const top = y - tall;
  return [
    ['M', x, top],
    ['L', right, top],
    ['L', right, y],
    ['L', right - thickness, y],
    ['L', right - thickness, top + thickness],
    ['L', x, top + thickness],
    ['Z'],
  ];
}
