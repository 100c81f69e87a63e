import type { Block } from '../report/index.ts';
import { barred, neverBreak } from './band.ts';
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
  block: Extract<Block, { readonly kind: Kind }>,
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

function setBlock(block: Block, column: Column, setting: Setting): SetBlock {
  // The setter of a block's own kind takes it; TypeScript cannot follow that through the record.
  const set = setters[block.kind] as SetOne<Block['kind']>;
  const plain = set(block, column, setting);
  return block.isChanged === true ? { ...plain, bands: barred(plain.bands) } : plain;
}

/** What setting the blocks of a part carries from block to block. */
export interface BlockSetter {
  /** The setting but for the way back in here. */
  readonly setting: Omit<Setting, 'setBlocks'>;
  /** How much has been asked of the anchors so far. */
  readonly askedSoFar: () => number;
  /** Blocks set in earlier rounds that asked nothing: they come out the same again. */
  readonly kept: Map<string, SetBlock>;
}

/**
 * Sets blocks below each other; what must stay with its next block is not parted from it. `path`
 * tells where in the part the blocks stand, so that a later round finds again what it can keep.
 */
export function setBlocks(
  blocks: readonly Block[],
  column: Column,
  setter: BlockSetter,
  path: string = '',
): SetBlock {
  const bands: Band[] = [];
  const nodes: ElementNode[] = [];
  let isKept = false;
  for (const [index, block] of blocks.entries()) {
    const set = setOrKeep(block, column, setter, `${path}/${index}`);
    nodes.push(...set.nodes);
    const [first, ...others] = set.bands;
    if (first === undefined) continue;
    bands.push(isKept ? { ...first, breakBefore: neverBreak } : first);
    for (const band of others) bands.push(band);
    isKept = set.keepsWithNext === true;
  }
  return isKept ? { bands, nodes, keepsWithNext: true } : { bands, nodes };
}

function setOrKeep(
  block: Block,
  column: Column,
  setter: BlockSetter,
  path: string,
): SetBlock {
  const { kept, askedSoFar } = setter;
  const known = kept.get(path);
  if (known !== undefined) return known;
  const before = askedSoFar();
  let runs = 0;
  const set = setBlock(block, column, {
    ...setter.setting,
    setBlocks: (inner, innerColumn) => {
      runs += 1;
      return setBlocks(inner, innerColumn, setter, `${path}.${runs}`);
    },
  });
  if (askedSoFar() === before) kept.set(path, set);
  return set;
}
