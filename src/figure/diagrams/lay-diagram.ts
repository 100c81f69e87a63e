import type { Stroke } from '../../drawing/index.ts';
import { thinLine } from '../figure-setting.ts';
import type { Diagram } from '../figure-spec.ts';
import { boxAt } from '../geometry/box.ts';
import { filled, stroked } from '../ink/part.ts';
import { circlePath, linePath } from '../ink/paths.ts';
import { settleLabels } from '../labels/settle-labels.ts';
import { openBoard } from '../board.ts';
import type { Board } from '../board.ts';
import type { Strip } from '../strip.ts';
import type { PictureSetting } from '../pictures/lay-picture.ts';
import { setInGutter } from '../labels/small-label.ts';
import { curvePath } from './curve-path.ts';
import type { PlotScale } from './curve-path.ts';
import { hatch } from './hatch.ts';
import { wishForValue } from './label-values.ts';
import { mergeKeyValues } from './merge-key-values.ts';
import { plotScale } from './plot.ts';

/** One diagram with its title, values and hatch; y = 0 is its base line. */
export function layDiagram(diagram: Diagram, setting: PictureSetting): Strip {
  const { stations, theme } = setting;
  const scale = plotScale(diagram, stations);
  const board = openBoard();
  const ink = theme.colour.ink;
  const base = linePath({ x: stations.left, y: 0 }, { x: stations.right, y: 0 });
  board.draw(stroked(base, { width: theme.line.rule, colour: ink }));
  drawCurves(board, diagram, { scale, setting });
  writeTitle(board, diagram, setting);
  const values = mergeKeyValues(diagram, scale);
  for (const { key, from, to } of values) {
    if (key.isExtreme !== true || to > from) continue;
    const point = { x: from, y: scale.yOf(key.value) };
    board.draw(filled(circlePath(point, 1.6), theme.colour.accent));
  }
  const wishes = values.map((value) => wishForValue(value, scale, setting));
  settleLabels(board, wishes, { ...setting.bounds, leader: thinLine(theme) });
  const strip = board.strip();
  const stroke = { width: 0.35, colour: theme.colour.hatch };
  // An elastic curve is the member itself bent, no area that counts.
  if (diagram.quantity === 'deflection') return strip;
  const lines = hatch(diagram.curves, scale, { stations, gaps: strip.labels, stroke });
  return { ...strip, marks: [...lines.marks, ...strip.marks] };
}

interface Plot {
  readonly scale: PlotScale;
  readonly setting: PictureSetting;
}

/** Each curve, closed to the base line at both ends where it bounds an area. */
function drawCurves(
  board: Board,
  { curves, quantity }: Diagram,
  { scale, setting }: Plot,
): void {
  const { line, colour } = setting.theme;
  for (const { of, style } of curves) {
    const [first, last] = [of.pieces[0], of.pieces.at(-1)];
    if (first === undefined || last === undefined) continue;
    const path = curvePath(of, scale);
    const [, ...rest] = path;
    const begin = path[0];
    if (begin?.[0] !== 'M') continue;
    const stroke: Stroke = {
      width: line.diagram,
      colour: colour.ink,
      join: 'miter',
      ...(style === 'dashed' ? { dash: [4, 2] } : {}),
    };
    // An elastic curve bounds no area: a moved end stands free of the base line.
    const isOpen = quantity === 'deflection';
    const closed = stroked(
      isOpen
        ? path
        : [
            ['M', scale.xOf(first.start), 0],
            ['L', begin[1], begin[2]],
            ...rest,
            ['L', scale.xOf(last.end), 0],
          ],
      stroke,
    );
    board.draw(closed);
  }
}

/** The name and unit of the diagram, at the left of its base line. */
function writeTitle(board: Board, diagram: Diagram, setting: PictureSetting): void {
  const { title } = diagram;
  const label = setInGutter(title, setting);
  board.write(label, boxAt(0, -label.height / 2, label));
  const drawn = exaggeration(diagram, setting);
  if (drawn === undefined) return;
  const note = setInGutter({ kind: 'text', text: drawn }, setting);
  board.write(note, boxAt(0, label.height / 2 + 2, note));
}

/** How many times larger than its member an elastic curve is drawn, to two figures: `×120`. */
function exaggeration(
  diagram: Diagram,
  { stations }: PictureSetting,
): string | undefined {
  if (diagram.quantity !== 'deflection') return undefined;
  const upright = Math.abs(plotScale(diagram, stations).yOf(1));
  const along = (stations.right - stations.left) / (stations.end - stations.start);
  const times = Number((upright / along).toPrecision(2));
  return times > 0 && Number.isFinite(times) ? `×${times}` : undefined;
}
