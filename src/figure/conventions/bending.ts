import type { PathStep } from '../../drawing/index.ts';
import { pointOnCurve } from '../geometry/trace-path.ts';
import type { Point } from '../geometry/point.ts';
import { filled, stroked } from '../ink/part.ts';
import { linePath } from '../ink/paths.ts';
import { turningArrow } from '../ink/turning-arrow.ts';
import type { Sketch } from './sketch.ts';

/** Half length and depth of the bent piece, how far its middle hangs, points. */
const half = 17;
const depth = 10;
const sag = 5;
/** The small diagram under it: its base line, half length and height. */
const base = 26;
const reach = 20;
const rise = 9;

/**
 * Bending moment: a sagging piece of the member with the turning arrows that bend it so, and
 * under it on which side of the base line such a moment is drawn.
 */
export function sketchBending(
  sketch: Sketch,
  drawnOn: 'compression' | 'tension',
): void {
  const { colour, line } = sketch.setting.theme;
  const ink = { width: line.load, colour: colour.ink };
  sketch.draw(filled(bentPiece(), colour.fill, ink));
  for (const side of [-1, 1] as const) {
    const arc = side < 0 ? { from: 120, to: 240 } : { from: -60, to: 60 };
    const centre = { x: side * (half + 1), y: 0 };
    const turn = side < 0 ? 'clockwise' : 'counterclockwise';
    sketch.draw(turningArrow(centre, 10, { arc, turn, style: sketch.arrows.load }));
    sketch.letter('M', { x: side * (half + 12), y: 0 }, side < 0 ? 'w' : 'e');
  }
  sketchDiagram(sketch, drawnOn === 'compression' ? -1 : 1);
}

/** A piece with parallel curved faces: both hang in the middle by the sag. */
function bentPiece(): readonly PathStep[] {
  const [top, bottom] = [-depth / 2 - sag / 2, depth / 2 - sag / 2];
  const handle = (sag * 4) / 3;
  return [
    ['M', -half, top],
    ['C', -half / 3, top + handle, half / 3, top + handle, half, top],
    ['L', half - 1.5, bottom],
    ['C', half / 3, bottom + handle, -half / 3, bottom + handle, -half + 1.5, bottom],
    ['Z'],
  ];
}

function sketchDiagram(sketch: Sketch, side: -1 | 1): void {
  const { colour, line } = sketch.setting.theme;
  const y = base + (side < 0 ? rise : 0);
  const curve: readonly [Point, Point, Point, Point] = [
    { x: -reach, y },
    { x: -reach / 3, y: y + (side * rise * 4) / 3 },
    { x: reach / 3, y: y + (side * rise * 4) / 3 },
    { x: reach, y },
  ];
  const hatch = { width: 0.35, colour: colour.hatch };
  for (let x = -16; x <= 16; x += 4) {
    const to = pointOnCurve(curve, (x + reach) / (2 * reach));
    sketch.draw(stroked(linePath({ x: to.x, y }, to), hatch));
  }
  const [from, a, b, to] = curve;
  sketch.draw(
    stroked(
      [
        ['M', from.x, from.y],
        ['C', a.x, a.y, b.x, b.y, to.x, to.y],
      ],
      { width: line.diagram, colour: colour.ink },
    ),
  );
  sketch.draw(stroked(linePath(from, to), { width: line.rule, colour: colour.ink }));
  sketch.letter('+', { x: from.x, y }, 'w');
}
