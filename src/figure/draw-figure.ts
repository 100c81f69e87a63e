import type { Drawing } from '../drawing/index.ts';
import type { FontBook } from '../font/index.ts';
import type { Theme } from '../theme/index.ts';
import type { Typesetter } from '../typeset/index.ts';
import type { FigureSetting } from './figure-setting.ts';
import type { FigureSpec } from './figure-spec.ts';
import { layConventions } from './conventions/lay-conventions.ts';
import { layDiagrams } from './diagrams/diagrams.ts';
import { finishFigure } from './finish-figure.ts';
import type { LaidFigure } from './finish-figure.ts';
import { labelSetter } from './labels/set-label.ts';
import type { Strip } from './strip.ts';
import { layFreeBodies } from './pictures/free-body.ts';
import { layMember } from './pictures/member.ts';

/** What figures are drawn with. */
export interface FigureOptions {
  /** Width of the drawing, points; its height follows from what it shows. */
  readonly width: number;
  readonly fonts: FontBook;
  readonly typesetter: Typesetter;
  readonly theme: Theme;
  /** Told each character of a label that no face has; it is drawn as its number. */
  readonly missing?: (character: string) => void;
}

/** Draws a figure. The same specification and options always give the same drawing. */
export function drawFigure(spec: FigureSpec, options: FigureOptions): Drawing {
  const setLabel = labelSetter(options.fonts, options.typesetter, options.missing);
  return layOutFigure(spec, { ...options, setLabel }).drawing;
}

/** The narrowest figure that can hold a member with its margins, points. */
const narrowest = 160;

/**
 * Lays a figure out and tells where everything stands; `setLabel` sets its labels. A width under
 * 160 points is a RangeError.
 */
export function layOutFigure(spec: FigureSpec, setting: FigureSetting): LaidFigure {
  if (!(setting.width >= narrowest))
    throw new RangeError(`A figure needs ${narrowest} points, not ${setting.width}.`);
  const { alternate } = spec;
  return finishFigure(layStripOf(spec, setting), { width: setting.width, alternate });
}

function layStripOf(spec: FigureSpec, setting: FigureSetting): Strip {
  switch (spec.kind) {
    case 'member':
      return layMember(spec.picture, setting);
    case 'free-body':
      return layFreeBodies(spec.pictures, setting);
    case 'diagrams':
      return layDiagrams(spec, setting);
    case 'conventions':
      return layConventions(spec.shown, setting);
  }
}
