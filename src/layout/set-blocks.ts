import type { Block } from '../report/index.ts';
import { changeFirst, neverBreak } from './band.ts';
import type { Band } from './band.ts';
import { setEquation } from './blocks/equation.ts';
import { setFigure } from './blocks/figure.ts';
import { setGroup } from './blocks/group.ts';
import { setHeading } from './blocks/heading.ts';
import { setImage } from './blocks/image.ts';
import { setList } from './blocks/list.ts';
import { setListing } from './blocks/listing.ts';
import { setParagraph } from './blocks/paragraph.ts';
import { setSpace } from './blocks/space.ts';
import type { ElementNode } from './element-node.ts';
import type { Column, SetBlock, Setting } from './setting.ts';
import { setTable } from './table/set-table.ts';

type SetOne<Kind extends Block['kind']> = (
  block: Extract<Block, { kind: Kind }>,
  column: Column,
  setting: Setting,
) => SetBlock;

/** One kind of block, one way to set it. */
const setters: { readonly [Kind in Block['kind']]: SetOne<Kind> } = {
  heading: setHeading,
  paragraph: setParagraph,
  list: setList,
  table: setTable,
  equation: setEquation,
  figure: setFigure,
  image: setImage,
  listing: setListing,
  space: setSpace,
  group: setGroup,
};

function setBlock<Kind extends Block['kind']>(
  block: Extract<Block, { kind: Kind }>,
  column: Column,
  setting: Setting,
): SetBlock {
  const set = setters[block.kind as Kind] as SetOne<Kind>;
  return set(block, column, setting);
}

/** Sets blocks below each other; what must stay with its next block is not parted from it. */
export function setBlocks(
  blocks: readonly Block[],
  column: Column,
  setting: Setting,
): SetBlock {
  const bands: Band[] = [];
  const nodes: ElementNode[] = [];
  let isKept = false;
  for (const block of blocks) {
    const set = setBlock(block, column, setting);
    nodes.push(...set.nodes);
    if (set.bands.length === 0) continue;
    bands.push(
      ...(isKept
        ? changeFirst(set.bands, (band) => ({ ...band, breakBefore: neverBreak }))
        : set.bands),
    );
    isKept = set.keepsWithNext === true;
  }
  return isKept ? { bands, nodes, keepsWithNext: true } : { bands, nodes };
}
