import type { PathStep } from '../../drawing/index.ts';

/** A rectangle's outline: top left corner, width and height, y down. */
export function rectangle(
  x: number,
  y: number,
  width: number,
  height: number,
): readonly PathStep[] {
  return [
    ['M', x, y],
    ['L', x + width, y],
    ['L', x + width, y + height],
    ['L', x, y + height],
    ['Z'],
  ];
}
