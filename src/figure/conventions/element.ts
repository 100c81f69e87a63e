import type { Part } from '../ink/part.ts';
import { filled } from '../ink/part.ts';
import { closedPath } from '../ink/paths.ts';
import type { Sketch } from './sketch.ts';

/** Half the length and half the depth of a piece of a member, points. */
export const elementHalf: { readonly length: number; readonly depth: number } = {
  length: 15,
  depth: 6,
};

/** A short piece of a member between two cuts, about the origin. */
export function element({ setting }: Sketch): Part {
  const { length, depth } = elementHalf;
  const { colour, line } = setting.theme;
  const corners = [
    { x: -length, y: -depth },
    { x: length, y: -depth },
    { x: length, y: depth },
    { x: -length, y: depth },
  ];
  return filled(closedPath(corners), colour.fill, {
    width: line.load,
    colour: colour.ink,
  });
}
