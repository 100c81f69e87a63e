import type { Inline } from '../../report/index.ts';
import { neverBreak } from '../band.ts';
import type { Band } from '../band.ts';
import type { ElementNode } from '../element-node.ts';
import type { Column, Setting } from '../setting.ts';
import { setLines, textNode } from '../set-lines.ts';
import { smallBase } from '../text-look.ts';
import { textBands } from './text-bands.ts';

/** A caption set: kept whole, and with what stands above it. */
export interface SetCaption {
  readonly bands: readonly Band[];
  readonly node: ElementNode;
}

/** Sets a caption in small ragged type; `room` is the space above and below it. */
export function setCaption(
  content: readonly Inline[],
  column: Column,
  room: { readonly above: number; readonly below: number },
  setting: Setting,
): SetCaption {
  const base = smallBase(setting.theme);
  const fit = { width: column.width, align: 'ragged' } as const;
  const lines = setLines(content, base, fit, setting);
  const node = textNode('Caption', lines);
  const bands = textBands(lines, node, { leading: base.leading, x: column.x, ...room });
  return { bands: bands.map((band) => ({ ...band, breakBefore: neverBreak })), node };
}
