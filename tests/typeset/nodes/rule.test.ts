import { describe, expect, test } from 'vitest';
import { boxOf, draw, shapes } from '../../support/equations.ts';

describe('rules', () => {
  test('a rule has its own width and height, raised above the baseline', () => {
    const drawing = draw('\\rule[0.2em]{1em}{0.5em}');
    const [left, top, right, bottom] = boxOf(shapes(drawing)[0]!);
    expect([left, right]).toEqual([0, 10]);
    expect(drawing.baseline! - bottom).toBeCloseTo(2, 9);
    expect(bottom - top).toBeCloseTo(5, 9);
  });

  test('a strut takes room and draws nothing', () => {
    expect(shapes(draw('\\rule{1em}{0em}x'))).toEqual([]);
    expect(draw('\\rule{1em}{0em}1').width).toBeCloseTo(15, 9);
  });
});
