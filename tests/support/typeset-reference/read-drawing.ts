import type { Drawing, Mark, PathStep, ShapeMark } from '../../../src/drawing/index.ts';

/** A glyph of a drawing: its text, face, place (from the first baseline's start) and size. */
export type DrawnGlyph = readonly [
  text: string,
  face: string,
  x: number,
  y: number,
  size: number,
];

/** The box of a painted path: left, top, right, bottom, from the first baseline's start. */
export type DrawnBox = readonly [number, number, number, number];

/** What a drawing shows, in ems of the size that it was set at. */
export interface DrawnEquation {
  readonly glyphs: readonly DrawnGlyph[];
  readonly boxes: readonly DrawnBox[];
}

/** Reads back where a drawing puts its glyphs and paths. */
export function readDrawing(drawing: Drawing, size: number): DrawnEquation {
  const glyphs: DrawnGlyph[] = [];
  const boxes: DrawnBox[] = [];
  const baseline = drawing.baseline ?? 0;
  const read = (mark: Mark, left: number, top: number): void => {
    if (mark.kind === 'glyphs') {
      for (const { x, text } of mark.glyphs) {
        const at = (left + mark.x + x) / size;
        const below = (top + mark.y - baseline) / size;
        if (text.trim() !== '')
          glyphs.push([text, mark.face, at, below, mark.size / size]);
      }
    } else if (mark.kind === 'shape') {
      boxes.push(moveBox(boxOfShape(mark), left, top - baseline, size));
    } else if (mark.kind === 'group') {
      const before = boxes.length;
      for (const child of mark.marks) read(child, left + mark.x, top + mark.y);
      const clip = mark.clip;
      if (clip === undefined) return;
      const { x, y, width, height } = clip;
      const window = moveBox([x, y, x + width, y + height], left, top - baseline, size);
      boxes.splice(
        before,
        Infinity,
        ...boxes.slice(before).map((box) => cut(box, window)),
      );
    }
  };
  for (const mark of drawing.marks) read(mark, 0, 0);
  return { glyphs, boxes };
}

/** The box around all boxes. */
export function unionOf(boxes: readonly DrawnBox[]): DrawnBox {
  return [
    Math.min(...boxes.map((box) => box[0])),
    Math.min(...boxes.map((box) => box[1])),
    Math.max(...boxes.map((box) => box[2])),
    Math.max(...boxes.map((box) => box[3])),
  ];
}

function moveBox(box: DrawnBox, left: number, top: number, size: number): DrawnBox {
  const [x0, y0, x1, y1] = box;
  return [(x0 + left) / size, (y0 + top) / size, (x1 + left) / size, (y1 + top) / size];
}

function cut(box: DrawnBox, window: DrawnBox): DrawnBox {
  return [
    Math.max(box[0], window[0]),
    Math.max(box[1], window[1]),
    Math.min(box[2], window[2]),
    Math.min(box[3], window[3]),
  ];
}

/** The box of what is painted; a stroke reaches half its width beyond its path. */
function boxOfShape({ path, stroke }: ShapeMark): DrawnBox {
  const points = pointsOf(path);
  const spread = (stroke?.width ?? 0) / 2;
  const xs = points.map(([x]) => x);
  const ys = points.map(([, y]) => y);
  return [
    Math.min(...xs) - spread,
    Math.min(...ys) - spread,
    Math.max(...xs) + spread,
    Math.max(...ys) + spread,
  ];
}

/** Points on the lines and curves of a path. */
function pointsOf(path: readonly PathStep[]): readonly (readonly [number, number])[] {
  const points: (readonly [number, number])[] = [];
  for (const step of path) {
    if (step[0] === 'M' || step[0] === 'L') points.push([step[1], step[2]]);
    if (step[0] !== 'C') continue;
    const [x0, y0] = points.at(-1)!;
    const [, x1, y1, x2, y2, x3, y3] = step;
    for (let index = 1; index <= 64; index += 1) {
      const t = index / 64;
      const u = 1 - t;
      const blend = (a: number, b: number, c: number, d: number): number =>
        u ** 3 * a + 3 * u * u * t * b + 3 * u * t * t * c + t ** 3 * d;
      points.push([blend(x0, x1, x2, x3), blend(y0, y1, y2, y3)]);
    }
  }
  return points;
}
