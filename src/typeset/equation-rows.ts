import type { Segment } from './break-points.ts';
import { findSegments } from './break-points.ts';
import type { ChosenLine, SegmentMeasure } from './choose-breaks.ts';
import type { EquationNode } from './equation-node.ts';
import type { SetMarks } from './finish-drawing.ts';
import type { Box, Inherited, Setting } from './node-setter.ts';
import { openPen } from './pen.ts';
import type { Pen } from './pen.ts';

/** A segment measured in ems, ready to be placed. */
export interface MeasuredSegment extends SegmentMeasure {
  /** Width of its relation or operator with the space after it. */
  readonly head: number;
  readonly gapBoxes: readonly Box[];
  readonly boxes: readonly Box[];
  readonly height: number;
  readonly depth: number;
}

/** One row of a broken equation, lengths in ems, x from the equation's left edge. */
export interface EquationRow {
  readonly height: number;
  readonly depth: number;
  /** Where it ends. */
  readonly right: number;
  /** Draws it on the baseline y. */
  readonly place: (pen: Pen, y: number) => void;
}

/** Finds where an equation may be broken and measures the segments between. */
export function measureSegments(
  nodes: readonly EquationNode[],
  root: Inherited,
  setting: Setting,
): readonly MeasuredSegment[] {
  return findSegments(nodes).map((segment) => measureSegment(segment, root, setting));
}

function measureSegment(
  segment: Segment,
  root: Inherited,
  setting: Setting,
): MeasuredSegment {
  const { startsWith, level } = segment;
  const gapBoxes = segment.gap.map((node) => setting.set(node, root));
  const boxes = segment.nodes.map((node) => setting.set(node, root));
  return {
    startsWith,
    level,
    gap: widthOf(gapBoxes),
    width: widthOf(boxes),
    head: widthOf(boxes.slice(0, segment.headLength)),
    gapBoxes,
    boxes,
    height: Math.max(0, ...segment.nodes.map((node) => node.height)),
    depth: Math.max(0, ...segment.nodes.map((node) => node.depth)),
  };
}

function widthOf(boxes: readonly Box[]): number {
  let width = 0;
  for (const box of boxes) width += box.width;
  return width;
}

/** Makes a chosen line into a row; the space before its first segment falls away. */
export function rowOf(
  segments: readonly MeasuredSegment[],
  { from, to, x }: ChosenLine,
): EquationRow {
  const own = segments.slice(from, to);
  const boxes = own.flatMap(({ gapBoxes, boxes: after }, index) =>
    index === 0 && from > 0 ? after : [...gapBoxes, ...after],
  );
  return {
    height: Math.max(0, ...own.map(({ height }) => height)),
    depth: Math.max(0, ...own.map(({ depth }) => depth)),
    right: x + widthOf(boxes),
    place: (pen, y) => {
      let at = x;
      for (const box of boxes) {
        box.place(pen, at, y, box.width);
        at += box.width;
      }
    },
  };
}

/** Draws one row at a size in points; the drawing reaches from the equation's left edge. */
export function drawRow(
  { height, depth, right, place }: EquationRow,
  size: number,
): SetMarks {
  const pen = openPen(size);
  place(pen, height);
  return {
    width: Math.max(0, right) * size,
    height: (height + depth) * size,
    baseline: height * size,
    marks: pen.marks,
  };
}
