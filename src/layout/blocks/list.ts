import type { Mark } from '../../drawing/index.ts';
import type { Block } from '../../report/index.ts';
import type { Band, Piece } from '../band.ts';
import { elementNode } from '../element-node.ts';
import type { ElementNode } from '../element-node.ts';
import { narrowed } from '../column.ts';
import type { Column, SetBlock, Setting } from '../setting.ts';
import { bodyBase } from '../text-look.ts';

type List = Extract<Block, { kind: 'list' }>;

const leastIndent = 17;
const labelGap = 6;
const itemGap = 2.5;

/** Sets a list: each item's blocks stand to the right of a bullet or a number. */
export function setList(block: List, column: Column, setting: Setting): SetBlock {
  const labels = block.items.map((_, index): Label => {
    const words = block.isOrdered ? `${index + 1}.` : '•';
    return {
      ...setting.words.inLook(bodyBase(setting.theme).look)(words),
      x: column.x,
    };
  });
  const widest = labels.reduce((width, label) => Math.max(width, label.width), 0);
  const indent = Math.max(leastIndent, widest + labelGap);
  const inner = narrowed(column, indent);
  const items = block.items.map((item, index) =>
    setItem(setting.setBlocks(item, inner), labels[index], indent),
  );
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

/** A label set, and the left edge of its list. */
interface Label {
  readonly width: number;
  readonly marks: readonly Mark[];
  readonly x: number;
}

function setItem(content: SetBlock, label: Label | undefined, indent: number): SetItem {
  const labelNode = elementNode('Lbl');
  const node = elementNode('LI', [labelNode, elementNode('LBody', content.nodes)]);
  const last = content.bands.length - 1;
  const bands = content.bands.map((band, index): Band => {
    const above = index === 0 ? itemGap : band.above;
    const below = index === last ? itemGap : band.below;
    if (index > 0 || label === undefined) return { ...band, above, below };
    // Numbers end where the gap begins, so that their points stand under each other.
    const x = label.x + indent - labelGap - label.width;
    const y = band.baseline ?? 0;
    const piece: Piece = { of: labelNode, x, y, marks: label.marks };
    return { ...band, above, below, pieces: [piece, ...band.pieces] };
  });
  return { bands, node };
}
