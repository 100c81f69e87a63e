import type { Block } from '../../report/index.ts';
import { anchorBands, heightOfBands, neverBreak } from '../band.ts';
import type { Band, Frame } from '../band.ts';
import { narrowed } from '../column.ts';
import { elementNode } from '../element-node.ts';
import type { Column, SetBlock, Setting } from '../setting.ts';

type Group = Extract<Block, { kind: 'group' }>;

const sidePadding = 10;
const padding = 7;
const boxGap = 9;

/** Sets blocks that belong together: in a box, kept whole, or as a section without a look. */
export function setGroup(block: Group, column: Column, setting: Setting): SetBlock {
  const set = setRole(block, column, setting);
  const { anchor } = block;
  if (anchor === undefined) return set;
  return { ...set, bands: anchorBands(set.bands, anchor) };
}

function setRole(block: Group, column: Column, setting: Setting): SetBlock {
  switch (block.role) {
    case 'section': {
      const { nodes, ...set } = setting.setBlocks(block.blocks, column);
      return { ...set, nodes: [elementNode('Sect', nodes)] };
    }
    case 'keep': {
      const set = setting.setBlocks(block.blocks, column);
      return { ...set, bands: keepWhole(set.bands, column) };
    }
    case 'box':
      return setBox(block, column, setting);
  }
}

function setBox(block: Group, column: Column, setting: Setting): SetBlock {
  const inner = {
    ...narrowed(column, sidePadding, sidePadding),
    height: column.height - 2 * padding,
  };
  const { bands, nodes } = setting.setBlocks(block.blocks, inner);
  const frame: Frame = { kind: 'box', x: column.x, width: column.width };
  const pad: Band = { height: padding, above: 0, below: 0, breakBefore: 0, pieces: [] };
  const content = bands.map((band, index): Band => {
    const isLast = index === bands.length - 1;
    return {
      ...band,
      above: index === 0 ? 0 : band.above,
      below: isLast ? 0 : band.below,
      breakBefore: index === 0 ? neverBreak : band.breakBefore,
      // Where a box longer than a page goes on, its padding is kept on both pages.
      repeats: [pad, ...(band.repeats ?? [])],
      closing: (band.closing ?? 0) + padding,
    };
  });
  const framed = [
    { ...pad, above: boxGap },
    ...content,
    { ...pad, below: boxGap, breakBefore: neverBreak },
  ].map((band: Band) => ({ ...band, frames: [frame, ...(band.frames ?? [])] }));
  return { bands: keepWhole(framed, column), nodes: [elementNode('Div', nodes)] };
}

/** Forbids breaks between bands, where they fit on a page together. */
function keepWhole(bands: readonly Band[], { height }: Column): readonly Band[] {
  if (heightOfBands(bands) > height) return bands;
  return bands.map((band, index) =>
    index === 0 ? band : { ...band, breakBefore: neverBreak },
  );
}
