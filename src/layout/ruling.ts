import type { ShapeMark } from '../drawing/index.ts';
import type { Theme } from '../theme/index.ts';

/** A rectangle in a page's or a band's coordinates, points. */
export interface Rectangle {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

/** A horizontal rule from (x, y) to the right, of a width in points (default: the theme's). */
export function rule(
  from: { readonly x: number; readonly y: number; readonly length: number },
  theme: Theme,
  width: number = theme.line.rule,
): ShapeMark {
  const { x, y, length } = from;
  return {
    kind: 'shape',
    path: [
      ['M', x, y],
      ['L', x + length, y],
    ],
    stroke: { width, colour: theme.colour.ink },
  };
}

/** A rectangle's outline in a thin muted line: a space to be filled by hand. */
export function outline(area: Rectangle, theme: Theme): ShapeMark {
  const stroke = { width: theme.line.dimension, colour: theme.colour.muted };
  return { kind: 'shape', path: rectanglePath(area), stroke };
}

/** The path round a rectangle. */
export function rectanglePath({ x, y, width, height }: Rectangle): ShapeMark['path'] {
  return [
    ['M', x, y],
    ['L', x + width, y],
    ['L', x + width, y + height],
    ['L', x, y + height],
    ['Z'],
  ];
}
