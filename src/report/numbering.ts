import type { Block } from './blocks.ts';

/**
 * Numbers the equations of a part from 1, in the right margin beside the last line of each, so that
 * a reviewer can say which one he disagrees with. A line that has a margin note keeps it.
 */
export function numberEquations(blocks: readonly Block[]): readonly Block[] {
  let next = 1;
  const visit = (block: Block): Block => {
    if (block.kind === 'equation') return numbered(block, next++);
    if (block.kind === 'group') return { ...block, blocks: block.blocks.map(visit) };
    if (block.kind !== 'list') return block;
    return { ...block, items: block.items.map((item) => item.map(visit)) };
  };
  return blocks.map(visit);
}

function numbered(block: Extract<Block, { kind: 'equation' }>, number: number): Block {
  const { lines } = block.statement;
  const last = lines.length - 1;
  const statement = {
    lines: lines.map((line, index) =>
      index === last && line.margin === undefined
        ? { ...line, margin: `(${number})` }
        : line,
    ),
  };
  return { ...block, statement };
}
