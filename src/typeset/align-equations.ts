import type { Drawing } from '../drawing/index.ts';
import { breakRows, plainIndent, roomFor } from './break-equation.ts';
import type { LineRoom } from './choose-breaks.ts';
import type { EquationTree } from './equation-node.ts';
import { drawRow, measureSegments, rowOf } from './equation-rows.ts';
import type { EquationRow, MeasuredSegment } from './equation-rows.ts';
import { finishDrawing, rootOf } from './finish-drawing.ts';
import type { EquationStyle } from './finish-drawing.ts';
import type { Inherited, Setting } from './node-setter.ts';
import { stackDrawings } from './stack-drawings.ts';
import { refuse } from './typeset-fault.ts';

/** One line of a derivation: what stands left of its relation, and the rest. */
export interface AlignedLine {
  /** TeX of the left part; empty where the line goes on from the one above. */
  readonly left: string;
  /** TeX of the right part, beginning with the relation. */
  readonly right: string;
  /** The line spoken. */
  readonly alternate?: string;
  /** The line in linear form. */
  readonly actualText?: string;
}

/** How a derivation is set. */
export interface AlignedOptions extends Pick<EquationStyle, 'size' | 'colour'> {
  /** The width that its lines should keep to, points. */
  readonly width: number;
  /** Default: true. */
  readonly display?: boolean;
  /** Baseline to baseline between the rows of one broken line, points. Default: 1.5 em. */
  readonly leading?: number;
}

/** A derivation whose relations stand under each other. */
export interface AlignedEquations {
  /**
   * A drawing a line, in order, all to be placed at one x. A line that had to be broken is one
   * drawing of several rows, whose baseline is that of the first.
   */
  readonly lines: readonly Drawing[];
  /** Width kept for the left parts, points; each relation follows after its own space. */
  readonly offset: number;
}

/** The two parts of a line, parsed. */
export interface AlignedTrees {
  readonly left: EquationTree;
  /** Parsed behind an empty atom, so that the relation has its space before it. */
  readonly right: EquationTree;
  readonly line: AlignedLine;
}

/** A left part wider than this share of the width may be set on a row of its own. */
const widestShare = 0.45;
const defaultLeading = 1.5;
const clearance = 0.35;

/**
 * Sets the lines of a derivation on one alignment. The relations stand behind the widest left
 * part, as long as all lines then fit unbroken; else left parts wider than 45 % of the width are
 * not counted, and stand on a row of their own above their right part. A line that is too wide
 * goes on in further rows just right of the relation.
 */
export function alignEquations(
  trees: readonly AlignedTrees[],
  options: AlignedOptions,
  setting: Setting,
): AlignedEquations {
  const { size, display = true, leading = defaultLeading * size } = options;
  const width = options.width / size;
  const root = rootOf(options.colour, display);
  const parts = trees.map((tree) => measureParts(tree, root, setting));
  const offset = chooseOffset(parts, width);
  const lines = parts.map((part, index): Drawing => {
    const rows = rowsOf(part, { offset, width });
    const drawn = rows.map((row) => drawRow(row, size));
    const {
      marks,
      height,
      baseline = 0,
      ...room
    } = stackDrawings(drawn, {
      leading,
      clearance: clearance * size,
    });
    return finishDrawing(
      { ...room, height, baseline, marks },
      trees[index]?.line ?? {},
    );
  });
  return { lines, offset: offset * size };
}

interface Parts {
  readonly left: readonly MeasuredSegment[];
  readonly right: readonly MeasuredSegment[];
  readonly leftWidth: number;
  readonly rightWidth: number;
}

function measureParts(
  { left, right }: AlignedTrees,
  root: Inherited,
  setting: Setting,
): Parts {
  const leftSegments = segmentsOf(left, root, setting);
  // The first of the right segments is the empty atom that gives the relation its space.
  const rightSegments = segmentsOf(right, root, setting);
  return {
    left: leftSegments,
    right: rightSegments,
    leftWidth: totalWidth(leftSegments),
    rightWidth: totalWidth(rightSegments),
  };
}

function segmentsOf(
  tree: EquationTree,
  root: Inherited,
  setting: Setting,
): readonly MeasuredSegment[] {
  const [line, ...others] = tree.lines;
  if (tree.tag !== undefined) return refuse('a \\tag in aligned lines');
  if (others.length > 0) return refuse('a line break in aligned lines');
  return measureSegments(line?.nodes ?? [], root, setting);
}

function totalWidth(segments: readonly MeasuredSegment[]): number {
  return segments.reduce((total, { gap, width }) => total + gap + width, 0);
}

/** The width kept for left parts, ems. */
function chooseOffset(parts: readonly Parts[], width: number): number {
  const widest = Math.max(0, ...parts.map(({ leftWidth }) => leftWidth));
  const longest = Math.max(0, ...parts.map(({ rightWidth }) => rightWidth));
  if (widest + longest <= width) return widest;
  const counted = parts
    .map(({ leftWidth }) => leftWidth)
    .filter((leftWidth) => leftWidth <= widestShare * width);
  return Math.max(counted.length === 0 ? plainIndent : 0, ...counted);
}

interface Place {
  readonly offset: number;
  readonly width: number;
}

/** The rows of one line: left and right part on the first, or the left part on its own. */
function rowsOf(part: Parts, { offset, width }: Place): readonly EquationRow[] {
  const right = breakRows(part.right, roomRightOf(part.right, { offset, width }));
  if (part.leftWidth > offset) {
    return [...breakRows(part.left, roomFor(part.left, width)), ...right];
  }
  const x = offset - part.leftWidth;
  const left = rowOf(part.left, { from: 0, to: part.left.length, x });
  const [first, ...further] = right;
  return first === undefined ? [left] : [joined(left, first), ...further];
}

/** Right parts begin at the offset and go on just right of their relation. */
function roomRightOf(
  segments: readonly MeasuredSegment[],
  { offset, width }: Place,
): LineRoom {
  const [start, relation] = segments;
  const at = offset + (start?.width ?? 0) + (relation?.gap ?? 0);
  const after = at + (relation?.head ?? 0);
  const room = { width, first: offset };
  return after <= width / 2
    ? { ...room, atRelation: at, atOther: after }
    : { ...room, atRelation: plainIndent, atOther: plainIndent };
}

function joined(one: EquationRow, other: EquationRow): EquationRow {
  return {
    height: Math.max(one.height, other.height),
    depth: Math.max(one.depth, other.depth),
    right: Math.max(one.right, other.right),
    place: (pen, y) => {
      one.place(pen, y);
      other.place(pen, y);
    },
  };
}
