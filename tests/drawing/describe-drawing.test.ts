import { expect, test } from 'vitest';
import { describeDrawing } from '../../src/drawing/index.ts';

test('rounds to a hundredth of a point and never writes minus zero', () => {
  const drawing = {
    width: 1 / 3,
    height: -0.001,
    marks: [
      {
        kind: 'shape',
        path: [['M', -0.004, 2 / 3]],
        stroke: { width: 0.125, colour: [0.5, 0.25, 1 / 3] },
      },
    ],
  } as const;
  expect(describeDrawing(drawing)).toBe(
    'drawing 0.33 × 0\n  shape M 0 0.67 stroke 0.13 (0.5 0.25 0.33)',
  );
});

test('says what is no part of the text', () => {
  const group = {
    kind: 'group',
    x: 0,
    y: 0,
    marks: [],
    artifact: 'pagination',
  } as const;
  expect(describeDrawing({ width: 1, height: 1, marks: [group] })).toContain(
    'group (0, 0) artifact pagination',
  );
});
