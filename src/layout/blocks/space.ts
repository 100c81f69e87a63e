import type { Block } from '../../report/index.ts';
import type { Band, Piece } from '../band.ts';
import { elementNode } from '../element-node.ts';
import { outline } from '../ruling.ts';
import type { Column, SetBlock, Setting } from '../setting.ts';
import { smallBase } from '../text-look.ts';

type Space = Extract<Block, { kind: 'space' }>;

const gap = 6;
const inset = 5;
// A labelled space is made for a seal or a signature: wider than high, and no wider than the column.
const widthShare = 1.6;

/** Blank paper; with a label, a thin outline and the label in its upper left corner. */
export function setSpace(block: Space, column: Column, setting: Setting): SetBlock {
  const height = Math.min(block.height, column.height);
  const plain: Band = { height, above: 0, below: 0, breakBefore: 0, pieces: [] };
  if (block.label === undefined)
    return { bands: [{ ...plain, isGap: true }], nodes: [] };
  const base = smallBase(setting.theme);
  const look = { ...base.look, colour: base.muted };
  const { marks, width: labelWidth } = setting.words.inLook(look)(block.label);
  const asked = Math.max(height * widthShare, labelWidth + 2 * inset);
  const width = Math.min(column.width, asked);
  const node = elementNode('P');
  const area = { x: 0, y: 0, width, height };
  const { x } = column;
  const pieces: readonly Piece[] = [
    { of: 'layout', x, y: 0, marks: [outline(area, setting.theme)] },
    { of: node, x: x + inset, y: inset + look.size * 0.75, marks },
  ];
  return { bands: [{ ...plain, above: gap, below: gap, pieces }], nodes: [node] };
}
