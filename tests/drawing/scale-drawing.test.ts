import { expect, test } from 'vitest';
import { describeDrawing, scaleDrawing } from '../../src/drawing/index.ts';
import type { Drawing } from '../../src/drawing/index.ts';

const drawing: Drawing = {
  width: 100,
  height: 40,
  baseline: 30,
  alternate: 'All kinds of mark',
  marks: [
    {
      kind: 'glyphs',
      x: 2,
      y: 4,
      face: 'text',
      size: 10,
      colour: [0, 0, 0],
      glyphs: [
        { id: 1, x: 0, text: 'a' },
        { id: 2, x: 6, text: 'b' },
      ],
    },
    {
      kind: 'shape',
      path: [['M', 0, 2], ['L', 4, 6], ['C', 1, 2, 3, 4, 5, 6], ['Z']],
      fill: [1, 0, 0],
      stroke: {
        width: 2,
        colour: [0, 0, 0],
        dash: [4, 2],
        cap: 'round',
        join: 'bevel',
      },
    },
    { kind: 'image', x: 2, y: 4, width: 6, height: 8, source: 'logo.png' },
    {
      kind: 'link',
      x: 2,
      y: 4,
      width: 6,
      height: 8,
      to: { anchor: 'b1' },
      says: 'Sheet 3',
    },
    {
      kind: 'link',
      x: 0,
      y: 0,
      width: 2,
      height: 2,
      to: { address: 'https://a.test' },
      says: 'A',
    },
    { kind: 'anchor', y: 12, name: 'here' },
    {
      kind: 'group',
      x: 10,
      y: 20,
      element: 3,
      clip: { x: 0, y: 0, width: 2, height: 4 },
      actualText: 'M = 2',
      marks: [{ kind: 'anchor', y: 2, name: 'within' }],
    },
  ],
};

test('describes every kind of mark on a line of its own', () => {
  expect(describeDrawing(drawing)).toBe(
    [
      'drawing 100 × 40 baseline 30 “All kinds of mark”',
      '  glyphs (2, 4) text 10 …6 “ab”',
      '  shape M 0 2 L 4 6 C 1 2 3 4 5 6 Z fill (1 0 0) stroke 2 dash 4 2 round bevel',
      '  image (2, 4) 6 × 8 logo.png',
      '  link (2, 4) 6 × 8 → #b1 “Sheet 3”',
      '  link (0, 0) 2 × 2 → https://a.test “A”',
      '  anchor 12 #here',
      '  group (10, 20) element 3 clip (0, 0) 2 × 4 “M = 2”',
      '    anchor 2 #within',
    ].join('\n'),
  );
});

test('makes all of a drawing smaller, letters, lines and dashes included', () => {
  expect(describeDrawing(scaleDrawing(drawing, 0.5))).toBe(
    [
      'drawing 50 × 20 baseline 15 “All kinds of mark”',
      '  glyphs (1, 2) text 5 …3 “ab”',
      '  shape M 0 1 L 2 3 C 0.5 1 1.5 2 2.5 3 Z fill (1 0 0) stroke 1 dash 2 1 round bevel',
      '  image (1, 2) 3 × 4 logo.png',
      '  link (1, 2) 3 × 4 → #b1 “Sheet 3”',
      '  link (0, 0) 1 × 1 → https://a.test “A”',
      '  anchor 6 #here',
      '  group (5, 10) element 3 clip (0, 0) 1 × 2 “M = 2”',
      '    anchor 1 #within',
    ].join('\n'),
  );
});
