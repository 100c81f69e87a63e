import { describe, expect, test } from 'vitest';
import type { Colour } from '../../src/drawing/index.ts';
import { openPen } from '../../src/typeset/pen.ts';
import type { PenGlyphs } from '../../src/typeset/pen.ts';

const black: Colour = [0, 0, 0];
const a: PenGlyphs = {
  face: 'F',
  scale: 1,
  colour: black,
  glyphs: [{ id: 7, advance: 0.5, text: 'a' }],
};

describe('the pen', () => {
  test('joins neighbours on one baseline into one run, in points', () => {
    const pen = openPen(10);
    pen.glyphs(a, 1, 2);
    pen.glyphs({ ...a, colour: [0, 0, 0] }, 1.75, 2);
    expect(pen.marks).toEqual([
      {
        kind: 'glyphs',
        x: 10,
        y: 20,
        face: 'F',
        size: 10,
        colour: black,
        glyphs: [
          { id: 7, x: 0, text: 'a' },
          { id: 7, x: 7.5, text: 'a' },
        ],
      },
    ]);
  });

  test.each([
    ['face', { ...a, face: 'G' }, 2],
    ['size', { ...a, scale: 0.7 }, 2],
    ['colour', { ...a, colour: [1, 0, 0] as const }, 2],
    ['baseline', a, 2.1],
  ])('another %s begins another run', (_, next, y) => {
    const pen = openPen(10);
    pen.glyphs(a, 1, 2);
    pen.glyphs(next, 1.5, y);
    expect(pen.marks).toHaveLength(2);
  });

  test('a shape between two glyphs parts their runs, so that the order is kept', () => {
    const pen = openPen(10);
    pen.glyphs(a, 0, 0);
    pen.shape(
      [
        ['M', 0, 0],
        ['L', 1, 0],
      ],
      { stroke: { width: 0.1, colour: black, dash: [1] } },
    );
    pen.glyphs(a, 1, 0);
    expect(pen.marks.map((mark) => mark.kind)).toEqual(['glyphs', 'shape', 'glyphs']);
    expect(pen.marks[1]).toMatchObject({
      path: [
        ['M', 0, 0],
        ['L', 10, 0],
      ],
      stroke: { width: 1, dash: [10] },
    });
  });

  test('a shape with a window is cut off there', () => {
    const pen = openPen(10);
    const window = { left: 1, top: 2, right: 3, bottom: 5 };
    pen.shape([['M', 0, 0], ['C', 1, 1, 2, 2, 3, 3], ['Z']], { fill: black, window });
    expect(pen.marks).toMatchObject([
      {
        kind: 'group',
        clip: { x: 10, y: 20, width: 20, height: 30 },
        marks: [{ kind: 'shape' }],
      },
    ]);
  });
});
