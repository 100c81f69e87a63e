import type { FigureSetting } from '../figure-setting.ts';
import type { ConventionKind, FigureSpec } from '../figure-spec.ts';
import { boxAt } from '../geometry/box.ts';
import { openBoard } from '../board.ts';
import type { Strip } from '../strip.ts';
import { beside, boundsOf, moveStrip, emptyStrip } from '../strip.ts';
import { setSmall } from '../labels/small-label.ts';
import { sketchAxial } from './axial.ts';
import { sketchBending } from './bending.ts';
import { sketchForces } from './forces.ts';
import { sketchMoments } from './moments.ts';
import { sketchShear } from './shear.ts';
import { openSketch } from './sketch.ts';
import type { Sketch } from './sketch.ts';

type Shown = Extract<FigureSpec, { readonly kind: 'conventions' }>['shown'][number];

/** The narrowest cell, the room between cells and rows, and from a sketch to its caption, points. */
const leastCell = 72;
const cellGap = 10;
const rowGap = 14;
const captionGap = 8;

/** Sign conventions side by side in cells of one width, a caption under each; more rows where they do not fit in one. */
export function layConventions(shown: readonly Shown[], setting: FigureSetting): Strip {
  const most = Math.max(
    1,
    Math.floor((setting.width + cellGap) / (leastCell + cellGap)),
  );
  const rows = Math.max(1, Math.ceil(shown.length / most));
  const columns = Math.max(1, Math.ceil(shown.length / rows));
  let whole = emptyStrip;
  for (let row = 0; row < rows; row += 1) {
    const cells = shown.slice(row * columns, (row + 1) * columns);
    const strip = layRow(cells, columns, setting);
    const foot = row === 0 ? 0 : (boundsOf(whole)?.bottom ?? 0) + rowGap;
    whole = beside(whole, moveStrip(strip, foot - (boundsOf(strip)?.top ?? 0)));
  }
  return whole;
}

/** One row: sketches on one middle line, captions on one first line. */
function layRow(
  cells: readonly Shown[],
  columns: number,
  setting: FigureSetting,
): Strip {
  const width = (setting.width - (columns - 1) * cellGap) / columns;
  const middleOf = (column: number): number => column * (width + cellGap) + width / 2;
  let whole = emptyStrip;
  for (const [column, { what }] of cells.entries()) {
    const sketch = openSketch(setting);
    draw(sketch, what);
    const strip = sketch.strip();
    const bounds = boundsOf(strip);
    const middle = ((bounds?.left ?? 0) + (bounds?.right ?? 0)) / 2;
    whole = beside(whole, moveStrip(strip, 0, middleOf(column) - middle));
  }
  const top = (boundsOf(whole)?.bottom ?? 0) + captionGap;
  for (const [column, { caption }] of cells.entries()) {
    whole = beside(
      whole,
      layCaption(caption, { middle: middleOf(column), top, width }, setting),
    );
  }
  return whole;
}

function draw(sketch: Sketch, what: ConventionKind): void {
  switch (what.kind) {
    case 'forces':
      sketchForces(sketch, what);
      break;
    case 'moments':
      sketchMoments(sketch, what.positive);
      break;
    case 'axial':
      sketchAxial(sketch);
      break;
    case 'shear':
      sketchShear(sketch);
      break;
    case 'bending':
      sketchBending(sketch, what.drawnOn);
      break;
  }
}

interface CaptionPlace {
  readonly middle: number;
  readonly top: number;
  readonly width: number;
}

/** A caption, broken between words to the width of its cell, each line in the middle. */
function layCaption(
  caption: string,
  place: CaptionPlace,
  setting: FigureSetting,
): Strip {
  const board = openBoard();
  const { small, smallLeading } = setting.theme.text;
  for (const [index, text] of breakWords(caption, place.width, setting).entries()) {
    const line = setSmall({ kind: 'text', text }, setting);
    const baseline = place.top + small * 0.7 + index * smallLeading;
    const top = baseline - (line.baseline ?? line.height);
    board.write(line, boxAt(place.middle - line.width / 2, top, line));
  }
  return board.strip();
}

/** Lines as full as they go; a word wider than the cell stands on a line of its own. */
function breakWords(
  text: string,
  width: number,
  setting: FigureSetting,
): readonly string[] {
  const lines: string[] = [];
  for (const word of text.split(/\s+/u).filter((each) => each !== '')) {
    const last = lines.at(-1);
    const longer = last === undefined ? word : `${last} ${word}`;
    const fits = setSmall({ kind: 'text', text: longer }, setting).width <= width;
    if (last !== undefined && fits) lines[lines.length - 1] = longer;
    else lines.push(word);
  }
  return lines;
}
