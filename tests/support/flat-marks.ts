import type {
  Drawing,
  GlyphsMark,
  Mark,
  PathStep,
  ShapeMark,
} from '../../src/drawing/index.ts';

/** Every shape and every run of glyphs of a drawing with its place on it, out of all groups. */
export function flatMarks(drawing: Drawing): readonly (ShapeMark | GlyphsMark)[] {
  return drawing.marks.flatMap((mark) => flatten(mark, 0, 0));
}

function flatten(
  mark: Mark,
  dx: number,
  dy: number,
): readonly (ShapeMark | GlyphsMark)[] {
  switch (mark.kind) {
    case 'group':
      return mark.marks.flatMap((each) => flatten(each, dx + mark.x, dy + mark.y));
    case 'shape':
      return [{ ...mark, path: mark.path.map((step) => moveStep(step, dx, dy)) }];
    case 'glyphs':
      return [{ ...mark, x: mark.x + dx, y: mark.y + dy }];
    case 'image':
    case 'link':
    case 'anchor':
      return [];
  }
}

function moveStep(step: PathStep, dx: number, dy: number): PathStep {
  switch (step[0]) {
    case 'Z':
      return step;
    case 'C':
      return [
        'C',
        step[1] + dx,
        step[2] + dy,
        step[3] + dx,
        step[4] + dy,
        step[5] + dx,
        step[6] + dy,
      ];
    case 'M':
    case 'L':
      return [step[0], step[1] + dx, step[2] + dy];
  }
}

/** A point on a drawing. */
export interface Place {
  readonly x: number;
  readonly y: number;
}

/** The points that a path goes through. */
export function pointsOf(path: readonly PathStep[]): readonly Place[] {
  return path.flatMap((step): readonly Place[] => {
    switch (step[0]) {
      case 'Z':
        return [];
      case 'C':
        return [{ x: step[5], y: step[6] }];
      case 'M':
      case 'L':
        return [{ x: step[1], y: step[2] }];
    }
  });
}

/** A filled arrowhead: where it points to, and the middle of its back. */
export interface Head {
  readonly tip: Place;
  readonly back: Place;
}

/** Every filled arrowhead of a drawing: a filled triangle that begins at its tip. */
export function filledHeads(drawing: Drawing): readonly Head[] {
  return flatMarks(drawing).flatMap((mark) => {
    if (mark.kind !== 'shape' || mark.fill === undefined) return [];
    const [tip, left, right, ...more] = pointsOf(mark.path);
    if (tip === undefined || left === undefined || right === undefined) return [];
    if (more.length > 0) return [];
    const back = { x: (left.x + right.x) / 2, y: (left.y + right.y) / 2 };
    return [{ tip, back }];
  });
}

/** The text of a drawing, run by run. */
export function textsOf(drawing: Drawing): readonly string[] {
  return flatMarks(drawing).flatMap((mark) =>
    mark.kind === 'glyphs' ? [mark.glyphs.map(({ text }) => text).join('')] : [],
  );
}
