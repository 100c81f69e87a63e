import type { Colour, Mark, PathStep, Stroke } from '../../drawing/index.ts';
import type { Box } from '../geometry/box.ts';
import { unionOf } from '../geometry/box.ts';
import { tracePath } from '../geometry/trace-path.ts';

/** Something drawn, and the boxes of it that no label may enter. */
export interface Part {
  readonly marks: readonly Mark[];
  readonly boxes: readonly Box[];
}

/** Nothing drawn. */
export const nothing: Part = { marks: [], boxes: [] };

/** A line along a path; labels keep off it. */
export function stroked(path: readonly PathStep[], stroke: Stroke): Part {
  if (path.length === 0) return nothing;
  return {
    marks: [{ kind: 'shape', path, stroke }],
    boxes: tracePath(path, stroke.width / 2),
  };
}

/** A filled outline; labels keep off the box around it. */
export function filled(path: readonly PathStep[], fill: Colour, stroke?: Stroke): Part {
  const outline = unionOf(tracePath(path, (stroke?.width ?? 0) / 2));
  return {
    marks: [{ kind: 'shape', path, fill, ...(stroke === undefined ? {} : { stroke }) }],
    boxes: outline === undefined ? [] : [outline],
  };
}

/** Several parts as one, drawn in order. */
export function together(...parts: readonly Part[]): Part {
  return {
    marks: parts.flatMap(({ marks }) => marks),
    boxes: parts.flatMap(({ boxes }) => boxes),
  };
}

/** The same part, kept free as one box: a symbol that no label may reach into. */
export function asOneBox(part: Part): Part {
  const outline = unionOf(part.boxes);
  return { marks: part.marks, boxes: outline === undefined ? [] : [outline] };
}
