import type { Colour, Drawing } from '../../drawing/index.ts';
import type { FigureSetting } from '../figure-setting.ts';
import type { Label } from '../figure-spec.ts';

/** The largest part of the drawing's width that one label may take, and one in the gutter at the left. */
const widest = 0.7;
const widestInGutter = 0.2;

/** How one label differs from the others. */
export interface LabelLook {
  readonly colour?: Colour;
  readonly heavy?: boolean;
}

/** A label at the size of figure text; a label too long for the drawing is set smaller, so that it fits. */
export function setSmall(
  label: Label,
  setting: FigureSetting,
  look: LabelLook = {},
): Drawing {
  return setWithin(label, setting, { ...look, room: setting.width * widest });
}

/** A label that stands in the gutter: a case tag, the title of a diagram. */
export function setInGutter(
  label: Label,
  setting: FigureSetting,
  look: LabelLook = {},
): Drawing {
  return setWithin(label, setting, { ...look, room: setting.width * widestInGutter });
}

function setWithin(
  label: Label,
  { theme, setLabel }: FigureSetting,
  { room, ...look }: LabelLook & { readonly room: number },
): Drawing {
  const size = theme.text.small;
  const style = { colour: theme.colour.ink, ...look };
  const drawing = setLabel(label, { ...style, size });
  return drawing.width <= room
    ? drawing
    : setLabel(label, { ...style, size: (size * room) / drawing.width });
}
