import type { Block } from '../../report/index.ts';
import type { Band, Piece } from '../band.ts';
import { elementNode } from '../element-node.ts';
import type { ElementNode } from '../element-node.ts';
import { narrowed } from '../column.ts';
import type { Column, SetBlock, Setting } from '../setting.ts';
import { bodyBase } from '../text-look.ts';

type List = Extract<Block, { kind: 'list' }>;

const indent = 17;
const labelGap = 6;
const itemGap = 2.5;

/** Sets a list: each item's blocks stand to the right of a bullet or a number. */
export function setList(block: List, column: Column, setting: Setting): SetBlock {
  const inner = narrowed(column, indent);
  const items = block.items.map((item, index) => {
    const label = block.isOrdered ? `${index + 1}.` : '•';
    const content = setting.setBlocks(item, inner);
    return setItem(content, { label, x: column.x }, setting);
  });
  const bands = items.flatMap((item) => item.bands);
  const gap = setting.theme.text.paragraphGap;
  return {
    bands: bands.map((band, index) => ({
      ...band,
      above: index === 0 ? Math.max(gap, band.above) : band.above,
      below: index === bands.length - 1 ? Math.max(gap, band.below) : band.below,
    })),
    nodes: [
      elementNode(
        'L',
        items.map(({ node }) => node),
      ),
    ],
  };
}

interface SetItem {
  readonly bands: readonly Band[];
  readonly node: ElementNode;
}

interface Label {
  readonly label: string;
  /** Left edge of the list. */
  readonly x: number;
}

function setItem(content: SetBlock, { label, x }: Label, setting: Setting): SetItem {
  const labelNode = elementNode('Lbl');
  const node = elementNode('LI', [labelNode, elementNode('LBody', content.nodes)]);
  const last = content.bands.length - 1;
  const bands = content.bands.map((band, index): Band => {
    const above = index === 0 ? itemGap : band.above;
    const below = index === last ? itemGap : band.below;
    if (index > 0) return { ...band, above, below };
    const piece = labelPiece({ label, x }, labelNode, band.baseline ?? 0, setting);
    return { ...band, above, below, pieces: [piece, ...band.pieces] };
  });
  return { bands, node };
}

/** Numbers end where the gap begins, so that their points stand under each other. */
function labelPiece(
  { label, x }: Label,
  of: ElementNode,
  y: number,
  setting: Setting,
): Piece {
  const { width, marks } = setting.words.inLook(bodyBase(setting.theme).look)(label);
  return { of, x: x + Math.max(0, indent - labelGap - width), y, marks };
}
