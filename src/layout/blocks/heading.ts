import type { Block } from '../../report/index.ts';
import type { Theme } from '../../theme/index.ts';
import { anchorBands, neverBreak } from '../band.ts';
import type { Column, SetBlock, Setting } from '../setting.ts';
import { setLines, textNode } from '../set-lines.ts';
import { textBase } from '../text-look.ts';
import { textBands } from './text-bands.ts';

type Heading = Extract<Block, { kind: 'heading' }>;

/** Sizes and the room above and below, as shares of the size. */
function lookOf(
  level: Heading['level'],
  { text }: Theme,
): { readonly size: number; readonly above: number; readonly below: number } {
  switch (level) {
    case 1:
      return { size: text.h1, above: 22, below: 9 };
    case 2:
      return { size: text.h2, above: 17, below: 5 };
    case 3:
      return { size: text.h3, above: 12, below: 3 };
  }
}

/** Sets a heading, ragged and never hyphenated; it stays with what it heads. */
export function setHeading(block: Heading, column: Column, setting: Setting): SetBlock {
  const { size, above, below } = lookOf(block.level, setting.theme);
  const face = 'text-semibold';
  const base = textBase(setting.theme, { size, leading: size * 1.25, face });
  const fit = { width: column.width, align: 'ragged' } as const;
  const lines = setLines(block.content, base, fit, setting);
  const node = textNode(`H${block.level}`, lines);
  const room = { leading: base.leading, above, below, x: column.x };
  const bands = textBands(lines, node, room);
  const whole = bands.map((band, index) =>
    index === 0 ? band : { ...band, breakBefore: neverBreak },
  );
  const { anchor } = block;
  const anchored = anchor === undefined ? whole : anchorBands(whole, anchor);
  return { bands: anchored, nodes: [node], keepsWithNext: true };
}
