import { neverBreak } from '../band.ts';
import type { Band } from '../band.ts';
import type { ElementNode } from '../element-node.ts';
import type { Line } from '../set-line.ts';
import { placeLine } from '../set-lines.ts';

/** How the bands of a text stand among others. */
export interface TextRoom {
  readonly leading: number;
  readonly above: number;
  readonly below: number;
  /** Left edge of the lines. */
  readonly x: number;
}

// A page may end within a paragraph, though between two is better.
const withinText = 1.5;

/**
 * Lines as bands. A page neither begins nor ends with a single line of a text: there are no
 * widows and no orphans, and a text of up to three lines stays whole.
 */
export function textBands(
  lines: readonly Line[],
  own: ElementNode,
  { leading, above, below, x }: TextRoom,
): readonly Band[] {
  const last = lines.length - 1;
  return lines.map((line, index): Band => {
    const inner = index >= 2 && index <= last - 1 ? withinText : neverBreak;
    return {
      ...placeLine(line, leading, { own, x }),
      above: index === 0 ? above : 0,
      below: index === last ? below : 0,
      breakBefore: index === 0 ? 0 : inner,
    };
  });
}
