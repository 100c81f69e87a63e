import type { Stroke } from '../drawing/index.ts';
import type { Theme } from '../theme/index.ts';
import type { ArrowStyle } from './ink/arrow.ts';
import type { SetLabel } from './labels/set-label.ts';

/** What the drawing of a figure depends on, besides what it shows. */
export interface FigureSetting {
  /** Width of the drawing, points. */
  readonly width: number;
  readonly theme: Theme;
  readonly setLabel: SetLabel;
}

/** The arrows of a figure, by what they mean. */
export interface ArrowStyles {
  readonly load: ArrowStyle;
  /** One of the row of a distributed load. */
  readonly row: ArrowStyle;
  readonly reaction: ArrowStyle;
}

/** Loads are black with filled heads, reactions have open heads and the accent. */
export function arrowStyles({ line, colour }: Theme): ArrowStyles {
  const load: ArrowStyle = {
    head: 'filled',
    colour: colour.ink,
    weight: line.load,
    headLength: 6.6,
  };
  return {
    load,
    row: { ...load, weight: line.load * 0.6, headLength: 4.4 },
    reaction: {
      head: 'open',
      colour: colour.accent,
      weight: line.load * 1.1,
      headLength: 6,
    },
  };
}

/** The thin line of dimensions, leaders and the base lines of rows. */
export function thinLine({ line, colour }: Theme): Stroke {
  return { width: line.dimension, colour: colour.ink };
}
