import type { Block } from '../../report/index.ts';
import type { Mark } from '../../drawing/index.ts';
import type { Band } from '../band.ts';
import { elementNode } from '../element-node.ts';
import { outline } from '../ruling.ts';
import type { Column, SetBlock, Setting } from '../setting.ts';

type Image = Extract<Block, { kind: 'image' }>;

const gap = 6;

/**
 * Places a picture, made smaller where it does not fit. One that is not at hand leaves an outline
 * of its size and a remark.
 */
export function setImage(block: Image, column: Column, setting: Setting): SetBlock {
  const { source, alternate } = block;
  const factor = Math.min(1, column.width / block.width, column.height / block.height);
  const width = block.width * factor;
  const height = block.height * factor;
  const isThere = setting.hasImage(source);
  if (!isThere)
    setting.remark(`The picture ${source} is not at hand; its place is left blank.`);
  const mark: Mark = isThere
    ? { kind: 'image', x: 0, y: 0, width, height, source }
    : outline({ x: 0, y: 0, width, height }, setting.theme);
  const node = elementNode('Figure', [], { alternate });
  const band: Band = {
    height,
    above: gap,
    below: gap,
    breakBefore: 0,
    pieces: [{ of: node, x: column.x, y: 0, marks: [mark] }],
  };
  return { bands: [band], nodes: [node] };
}
