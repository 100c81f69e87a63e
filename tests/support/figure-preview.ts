import { labelSetter, layOutFigure } from '../../src/figure/index.ts';
import type { FigureSetting } from '../../src/figure/index.ts';
import { defaultTheme } from '../../src/theme/index.ts';
import { createTypesetter } from '../../src/typeset/index.ts';
import { drawingToSvg } from './drawing-to-svg.ts';
import { figureSamples } from './figure-samples.ts';
import { ownFonts } from './own-fonts.ts';

/** The setting of figures that tests and previews share. */
export const figureSetting: FigureSetting = {
  width: 410,
  theme: defaultTheme,
  setLabel: labelSetter(ownFonts, createTypesetter(ownFonts)),
};

/**
 * The sample figures asked for (all where none is named) as SVG, with or without their boxes;
 * figure-preview.js writes them to a folder.
 *
 * @public
 */
export function previewSamples(
  names: readonly string[],
  showBoxes: boolean,
): readonly (readonly [name: string, svg: string])[] {
  return Object.entries(figureSamples)
    .filter(([name]) => names.length === 0 || names.includes(name))
    .map(([name, spec]) => {
      const laid = layOutFigure(spec, figureSetting);
      return [
        name,
        showBoxes ? drawingToSvg(laid.drawing, laid) : drawingToSvg(laid.drawing),
      ];
    });
}
