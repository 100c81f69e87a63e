import type { Inline } from '../../report/index.ts';
import type { Band, MarginNote, Piece } from '../band.ts';
import type { ElementNode } from '../element-node.ts';
import type { Column, Setting } from '../setting.ts';
import { placeLine, setLines, textNode } from '../set-lines.ts';
import { smallBase } from '../text-look.ts';

/** A note set for the margin column, and its element. */
export interface SetNote {
  readonly note: MarginNote;
  readonly node: ElementNode;
}

/**
 * Sets a note beside a band, its first baseline level with the band's. Undefined where the column
 * has no margin beside it.
 */
export function setNote(
  content: readonly Inline[],
  baseline: number,
  column: Column,
  setting: Setting,
): SetNote | undefined {
  if (column.margin === undefined || content.length === 0) return undefined;
  const { x, width } = column.margin;
  const base = smallBase(setting.theme);
  const lines = setLines(content, base, { width, align: 'ragged' }, setting);
  const node = textNode('P', lines);
  let height = 0;
  const pieces: Piece[] = [];
  let first: number | undefined;
  for (const line of lines) {
    const placed = placeLine(line, base.leading, { own: node, x });
    first ??= placed.baseline;
    for (const piece of placed.pieces) pieces.push({ ...piece, y: piece.y + height });
    height += placed.height;
  }
  return { note: { y: baseline - (first ?? 0), height, pieces }, node };
}

/** A band with a note beside it. */
export function withNote(band: Band, { note }: SetNote): Band {
  return { ...band, notes: [...(band.notes ?? []), note] };
}
