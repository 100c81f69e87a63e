import type {
  Colour,
  GlyphsMark,
  Mark,
  PathStep,
  PlacedGlyph,
  ShapeMark,
  Stroke,
} from '../drawing/index.ts';
import type { MeasuredGlyph } from '../font/index.ts';
import type { Window } from './clip-outline.ts';

/** Glyphs to be drawn in one face, size and colour. Lengths in ems of the equation. */
export interface PenGlyphs {
  readonly face: string;
  /** Font size, ems of the equation. */
  readonly scale: number;
  readonly colour: Colour;
  readonly glyphs: readonly MeasuredGlyph[];
}

/** How a shape is painted; lengths in ems of the equation. */
export interface PenPaint {
  readonly fill?: Colour;
  readonly stroke?: Stroke;
  /** What lies outside is cut off. */
  readonly window?: Window;
}

/** Collects the marks of an equation: ems in, points out. */
export interface Pen {
  /** Draws glyphs one after the other from (x, y), y being the baseline. */
  readonly glyphs: (what: PenGlyphs, x: number, y: number) => void;
  readonly shape: (path: readonly PathStep[], paint: PenPaint) => void;
  /** Everything drawn so far. */
  readonly marks: readonly Mark[];
}

type Run = Omit<GlyphsMark, 'glyphs'> & { readonly glyphs: PlacedGlyph[] };

/**
 * A pen whose em is `size` points. Glyphs that follow each other on one baseline in one face,
 * size and colour become one run.
 */
export function openPen(size: number): Pen {
  const marks: Mark[] = [];
  let run: Run | undefined;

  const runFor = (what: PenGlyphs, x: number, y: number): Run => {
    const em = what.scale * size;
    if (run !== undefined && continues(run, what, em, y)) return run;
    const { face, colour } = what;
    run = { kind: 'glyphs', x, y, face, size: em, colour, glyphs: [] };
    marks.push(run);
    return run;
  };
  const glyphs = (what: PenGlyphs, x: number, y: number): void => {
    if (what.glyphs.length === 0) return;
    const into = runFor(what, x * size, y * size);
    let at = x * size - into.x;
    for (const { id, advance, text } of what.glyphs) {
      into.glyphs.push({ id, x: at, text });
      at += advance * into.size;
    }
  };
  const shape = (path: readonly PathStep[], paint: PenPaint): void => {
    run = undefined;
    const scaled: ShapeMark = {
      kind: 'shape',
      path: path.map((step) => scaleStep(step, size)),
      ...(paint.fill === undefined ? {} : { fill: paint.fill }),
      ...(paint.stroke === undefined
        ? {}
        : { stroke: scaleStroke(paint.stroke, size) }),
    };
    marks.push(
      paint.window === undefined ? scaled : clipped(scaled, paint.window, size),
    );
  };
  return { glyphs, shape, marks };
}

/** Baselines closer than this (points) are one. */
const sameBaseline = 1e-6;

function continues(run: Run, what: PenGlyphs, em: number, y: number): boolean {
  return (
    run.face === what.face &&
    isSameColour(run.colour, what.colour) &&
    Math.abs(run.size - em) < 1e-9 &&
    Math.abs(run.y - y) < sameBaseline
  );
}

function isSameColour(one: Colour, other: Colour): boolean {
  return (
    one === other || (one[0] === other[0] && one[1] === other[1] && one[2] === other[2])
  );
}

function scaleStep(step: PathStep, size: number): PathStep {
  switch (step[0]) {
    case 'M':
    case 'L':
      return [step[0], step[1] * size, step[2] * size];
    case 'C': {
      const [, x1, y1, x2, y2, x3, y3] = step;
      return ['C', x1 * size, y1 * size, x2 * size, y2 * size, x3 * size, y3 * size];
    }
    case 'Z':
      return step;
  }
}

function scaleStroke(stroke: Stroke, size: number): Stroke {
  const { dash, width } = stroke;
  const scaled = { ...stroke, width: width * size };
  return dash === undefined
    ? scaled
    : { ...scaled, dash: dash.map((length) => length * size) };
}

function clipped(
  mark: ShapeMark,
  { left, top, right, bottom }: Window,
  size: number,
): Mark {
  const clip = {
    x: left * size,
    y: top * size,
    width: (right - left) * size,
    height: (bottom - top) * size,
  };
  return { kind: 'group', x: 0, y: 0, marks: [mark], clip };
}
