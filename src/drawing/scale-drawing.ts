import type { Drawing } from './drawing.ts';
import type { GlyphsMark, GroupMark, Mark, PathStep, ShapeMark } from './marks.ts';

/**
 * A drawing made larger or smaller by a factor, all of it: places, sizes of letters, widths of
 * lines and dashes. Links and anchors move with what they belong to.
 */
export function scaleDrawing(drawing: Drawing, factor: number): Drawing {
  const { width, height, baseline, lastBaseline, marks, ...rest } = drawing;
  return {
    ...rest,
    width: width * factor,
    height: height * factor,
    ...(baseline === undefined ? {} : { baseline: baseline * factor }),
    ...(lastBaseline === undefined ? {} : { lastBaseline: lastBaseline * factor }),
    marks: marks.map((mark) => scaleMark(mark, factor)),
  };
}

function scaleMark(mark: Mark, factor: number): Mark {
  switch (mark.kind) {
    case 'glyphs':
      return scaleGlyphs(mark, factor);
    case 'shape':
      return scaleShape(mark, factor);
    case 'image':
    case 'link':
      return { ...mark, ...scaleBox(mark, factor) };
    case 'anchor':
      return { ...mark, y: mark.y * factor };
    case 'group':
      return scaleGroup(mark, factor);
  }
}

function scaleGlyphs(mark: GlyphsMark, factor: number): GlyphsMark {
  return {
    ...mark,
    x: mark.x * factor,
    y: mark.y * factor,
    size: mark.size * factor,
    glyphs: mark.glyphs.map((glyph) => ({ ...glyph, x: glyph.x * factor })),
  };
}

function scaleShape({ stroke, path, ...rest }: ShapeMark, factor: number): ShapeMark {
  const scaled = path.map((step) => scaleStep(step, factor));
  if (stroke === undefined) return { ...rest, path: scaled };
  const { width, dash } = stroke;
  const dashes =
    dash === undefined ? {} : { dash: dash.map((length) => length * factor) };
  return {
    ...rest,
    path: scaled,
    stroke: { ...stroke, width: width * factor, ...dashes },
  };
}

function scaleStep(step: PathStep, factor: number): PathStep {
  switch (step[0]) {
    case 'M':
      return ['M', step[1] * factor, step[2] * factor];
    case 'L':
      return ['L', step[1] * factor, step[2] * factor];
    case 'C':
      return [
        'C',
        step[1] * factor,
        step[2] * factor,
        step[3] * factor,
        step[4] * factor,
        step[5] * factor,
        step[6] * factor,
      ];
    case 'Z':
      return step;
  }
}

interface Box {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

function scaleBox({ x, y, width, height }: Box, factor: number): Box {
  return {
    x: x * factor,
    y: y * factor,
    width: width * factor,
    height: height * factor,
  };
}

function scaleGroup({ clip, ...mark }: GroupMark, factor: number): GroupMark {
  return {
    ...mark,
    x: mark.x * factor,
    y: mark.y * factor,
    marks: mark.marks.map((inner) => scaleMark(inner, factor)),
    ...(clip === undefined ? {} : { clip: scaleBox(clip, factor) }),
  };
}
