import type { EquationTree, WrittenLine } from './equation-node.ts';
import { rootOf } from './finish-drawing.ts';
import type { EquationStyle, SetMarks } from './finish-drawing.ts';
import { plainLook } from './equation-node.ts';
import type { Box, Inherited, Setting } from './node-setter.ts';
import { openPen } from './pen.ts';
import type { Pen } from './pen.ts';

/** How an equation is set on its own. */
export interface TypesetOptions extends EquationStyle {
  /** True for an equation on a line of its own: large operators, full fractions. Default false. */
  readonly display?: boolean;
  /**
   * Width of the column, points. It matters to an equation with a \tag alone: the equation is
   * centred in the column and the tag stands at its right edge. Default: the tag stands two ems
   * behind the equation.
   */
  readonly width?: number;
}

interface Line {
  readonly box: Box;
  readonly height: number;
  readonly depth: number;
  readonly gapAbove: number;
}

/** Between lines that the TeX itself breaks: baselines 1.2 em apart, or boxes 0.1 em. */
const lineSkip = 1.2;
const leastSkip = 0.1;
const tagGap = 2;

/** Sets an equation as it is written, breaking no lines of its own accord. */
export function setEquation(
  tree: EquationTree,
  options: TypesetOptions,
  setting: Setting,
): SetMarks {
  const { size, display = false, colour } = options;
  const root = rootOf(colour, display);
  const lines = tree.lines.map((line) => measureLine(line, root, setting));
  const tag = tree.tag === undefined ? undefined : setting.set(tree.tag, root);
  const own = Math.max(0, ...lines.map(({ box }) => box.width));
  const { width, left } = placeBeside(own, tag?.width, (options.width ?? 0) / size);

  const pen = openPen(size);
  const height = Math.max(lines[0]?.height ?? 0, tree.tag?.height ?? 0);
  const depth = placeLines(lines, pen, {
    baseline: height,
    leftOf: (line) => left + (display ? (own - line.box.width) / 2 : 0),
  });
  if (tag !== undefined) tag.place(pen, width - tag.width, height, tag.width);
  return {
    width: width * size,
    height: (height + Math.max(depth, tree.tag?.depth ?? 0)) * size,
    baseline: height * size,
    marks: pen.marks,
  };
}

/** Places lines below each other and gives the depth of the last below the first baseline. */
function placeLines(
  lines: readonly Line[],
  pen: Pen,
  place: { readonly baseline: number; readonly leftOf: (line: Line) => number },
): number {
  let { baseline } = place;
  let depth = 0;
  for (const [index, line] of lines.entries()) {
    if (index > 0) {
      const apart = Math.max(lineSkip, depth + leastSkip + line.height);
      baseline += apart + line.gapAbove;
    }
    line.box.place(pen, place.leftOf(line), baseline, line.box.width);
    depth = line.depth;
  }
  return baseline - place.baseline + depth;
}

/** Where an equation stands: with a tag, in the middle of the column but clear of the tag. */
function placeBeside(
  own: number,
  tag: number | undefined,
  column: number,
): { readonly width: number; readonly left: number } {
  if (tag === undefined) return { width: own, left: 0 };
  const width = Math.max(own + tagGap + tag, column);
  return {
    width,
    left: Math.max(0, Math.min((width - own) / 2, width - tag - tagGap - own)),
  };
}

function measureLine(line: WrittenLine, root: Inherited, setting: Setting): Line {
  const box = setting.set({ kind: 'row', ...plainLook, children: line.nodes }, root);
  return {
    box,
    height: Math.max(0, ...line.nodes.map((node) => node.height)),
    depth: Math.max(0, ...line.nodes.map((node) => node.depth)),
    gapAbove: line.gapAbove,
  };
}
