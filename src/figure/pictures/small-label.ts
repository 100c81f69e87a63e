import type { Colour, Drawing } from '../../drawing/index.ts';
import type { FigureSetting } from '../figure-setting.ts';
import type { Label } from '../figure-spec.ts';

/** The largest part of the drawing's width that one label may take. */
const widest = 0.7;

/** A label at the size of figure text; a label too long for the drawing is set smaller, so that it fits. */
export function setSmall(
  label: Label,
  { theme, setLabel, width }: FigureSetting,
  look: { readonly colour?: Colour; readonly heavy?: boolean } = {},
): Drawing {
  const size = theme.text.small;
  const style = { colour: theme.colour.ink, ...look };
  const drawing = setLabel(label, { ...style, size });
  const room = width * widest;
  return drawing.width <= room
    ? drawing
    : setLabel(label, { ...style, size: (size * room) / drawing.width });
}
