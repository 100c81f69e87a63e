import type { Inline } from '../report/index.ts';
import type { Piece } from './band.ts';
import { breakJustified } from './break-lines.ts';
import { breakRagged } from './break-ragged.ts';
import { elementNode } from './element-node.ts';
import type { ElementNode } from './element-node.ts';
import { lineItems } from './line-items.ts';
import type { LineItem } from './line-items.ts';
import { setLine } from './set-line.ts';
import type { Line } from './set-line.ts';
import type { Setting } from './setting.ts';
import type { TextBase } from './text-look.ts';

/** How lines are fitted into a width. */
export interface LineFit {
  readonly width: number;
  readonly align: 'justified' | 'ragged';
}

// Narrower than this many ems, justified lines gape.
const narrowest = 22;

/** Breaks inlines into lines of a width and sets them. No inlines: no lines. */
export function setLines(
  inlines: readonly Inline[],
  base: TextBase,
  fit: LineFit,
  setting: Setting,
): readonly Line[] {
  if (inlines.length === 0) return [];
  return setItems(lineItems(inlines, base, setting), base, fit, setting);
}

/** The same for items already made (table cells measure them first). */
export function setItems(
  items: readonly LineItem[],
  base: TextBase,
  { width, align }: LineFit,
  setting: Setting,
): readonly Line[] {
  const isWide = align === 'justified' && width >= narrowest * base.look.size;
  const ranges =
    (isWide ? breakJustified(items, width, setting) : undefined) ??
    breakRagged(items, width, setting);
  return ranges.map((range) => setLine(range, setting));
}

/** A line in its room: its pieces from the room's top left, and where its baseline is. */
export interface PlacedLine {
  readonly height: number;
  readonly baseline: number;
  readonly pieces: readonly Piece[];
}

// Share of the leading that stands above the baseline: ascenders .74 em and descenders .24 em of
// the text face, with the rest of a leading of 1.35 em shared out.
const baselineShare = 0.72;
const mathClearance = 1;

/**
 * Gives a line the room of its leading, or more where an equation in it is taller. `own` is the
 * element that its text belongs to.
 */
export function placeLine(
  line: Line,
  leading: number,
  { own, x = 0 }: { readonly own: ElementNode | 'layout'; readonly x?: number },
): PlacedLine {
  const room = leading * baselineShare;
  const above = Math.max(room, line.above === 0 ? 0 : line.above + mathClearance);
  const below = Math.max(
    leading - room,
    line.below === 0 ? 0 : line.below + mathClearance,
  );
  const pieces = line.parts.map(({ of, marks }): Piece => {
    return { of: of === 'own' ? own : of, x, y: above, marks };
  });
  return { height: above + below, baseline: above, pieces };
}

/** The element of a text: its links and formulas are its children, in order. */
export function textNode(
  type: ElementNode['type'],
  lines: readonly Line[],
  more: Omit<ElementNode, 'type' | 'children'> = {},
): ElementNode {
  const children = lines.flatMap(({ parts }) =>
    parts.flatMap(({ of }) => (of === 'own' ? [] : [of])),
  );
  return elementNode(type, children, more);
}
