import { drawFigure } from '../../figure/index.ts';
import { scaleDrawing } from '../../drawing/index.ts';
import type { Drawing } from '../../drawing/index.ts';
import type { Block } from '../../report/index.ts';
import { heightOfBands } from '../band.ts';
import type { Band } from '../band.ts';
import { elementNode } from '../element-node.ts';
import type { Column, SetBlock, Setting } from '../setting.ts';
import { missingCharacter } from '../remarks.ts';
import { setCaption } from './caption.ts';

type Figure = Extract<Block, { kind: 'figure' }>;

const gap = 10;
const captionGap = 5;

/** Sets a figure at the column's width with its caption below; it is never split. */
export function setFigure(block: Figure, column: Column, setting: Setting): SetBlock {
  const { theme, fonts, typesetter, remark } = setting;
  const missing = (character: string): void => {
    remark(missingCharacter(character));
  };
  const { width } = column;
  const caption =
    block.caption === undefined
      ? undefined
      : setCaption(block.caption, column, { above: captionGap, below: gap }, setting);
  const captionHeight =
    caption === undefined ? 0 : heightOfBands(caption.bands) + captionGap;
  const drawing = fitDrawing(
    drawFigure(block.figure, { width, fonts, typesetter, theme, missing }),
    { width, height: column.height - captionHeight },
  );
  const node = elementNode('Figure', [], { alternate: block.figure.alternate });
  const anchors = block.anchor === undefined ? {} : { anchors: [block.anchor] };
  const band: Band = {
    height: drawing.height,
    above: gap,
    below: gap,
    breakBefore: 0,
    pieces: [{ of: node, x: column.x, y: 0, marks: drawing.marks }],
    ...anchors,
  };
  if (caption === undefined) return { bands: [band], nodes: [node] };
  const together = elementNode('Div', [node, caption.node]);
  return {
    bands: [{ ...band, below: captionGap }, ...caption.bands],
    nodes: [together],
  };
}

/** A drawing as it is where it fits, else made smaller to fit a page. */
export function fitDrawing(
  drawing: Drawing,
  room: { readonly width: number; readonly height: number },
): Drawing {
  const factor = Math.min(1, room.width / drawing.width, room.height / drawing.height);
  return factor < 1 ? scaleDrawing(drawing, factor) : drawing;
}
