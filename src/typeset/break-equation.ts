import type { Drawing } from '../drawing/index.ts';
import { chooseBreaks } from './choose-breaks.ts';
import type { LineRoom } from './choose-breaks.ts';
import type { EquationTree } from './equation-node.ts';
import { drawRow, measureSegments, rowOf } from './equation-rows.ts';
import type { EquationRow, MeasuredSegment } from './equation-rows.ts';
import { finishDrawing, rootOf } from './finish-drawing.ts';
import type { EquationStyle } from './finish-drawing.ts';
import type { Setting } from './node-setter.ts';
import { refuse } from './typeset-fault.ts';

/** How an equation is set that may be broken into lines. */
export interface BrokenOptions extends EquationStyle {
  /** The width that its lines should keep to, points. */
  readonly width: number;
  /** Default: true. */
  readonly display?: boolean;
}

/** Continuation lines are indented by this (ems) where the relation stands too far right. */
export const plainIndent = 2;

/**
 * Breaks an equation into lines. A line that begins with a relation stands under the first
 * relation, another just right of it: `M = a + b`, `= c` under the equals sign and `+ d` under
 * `a`. Where that would leave less than half the width, both are indented by 2 em instead. Every
 * drawing reaches from the equation's left edge, so that all are placed at one x. A drawing is
 * wider than `width` only where its equation offers no break. The first carries the actual text
 * of the whole, the others an empty one.
 */
export function breakEquation(
  tree: EquationTree,
  options: BrokenOptions,
  setting: Setting,
): readonly Drawing[] {
  if (tree.tag !== undefined) return refuse('a \\tag where lines may be broken');
  const { size, width, alternate, actualText, display = true } = options;
  const root = rootOf(options.colour, display);
  const rows = tree.lines.flatMap(({ nodes }) => {
    const segments = measureSegments(nodes, root, setting);
    return breakRows(segments, roomFor(segments, width / size));
  });
  return rows.map((row, index) => {
    const isFirst = index === 0;
    return finishDrawing(drawRow(row, size), {
      ...(isFirst && alternate !== undefined ? { alternate } : {}),
      ...(actualText === undefined ? {} : { actualText: isFirst ? actualText : '' }),
    });
  });
}

/** Breaks measured segments into rows. */
export function breakRows(
  segments: readonly MeasuredSegment[],
  room: LineRoom,
): readonly EquationRow[] {
  return chooseBreaks(segments, room).map((line) => rowOf(segments, line));
}

/** Where the further lines of an equation begin that itself begins at the left edge. */
export function roomFor(segments: readonly MeasuredSegment[], width: number): LineRoom {
  let at = 0;
  for (const { gap, width: own, head, startsWith, level } of segments) {
    if (startsWith === 'relation' && level === 0)
      return roomBeside(at + gap, head, width);
    at += gap + own;
  }
  return { width, first: 0, atRelation: plainIndent, atOther: plainIndent };
}

/** The same where the first relation stands at `at` and is `head` wide with its space. */
function roomBeside(at: number, head: number, width: number): LineRoom {
  return at + head <= width / 2
    ? { width, first: 0, atRelation: at, atOther: at + head }
    : { width, first: 0, atRelation: plainIndent, atOther: plainIndent };
}
