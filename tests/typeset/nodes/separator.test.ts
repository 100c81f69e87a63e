import { describe, expect, test } from 'vitest';
import { boxOf, draw, shapes } from '../../support/equations.ts';

describe('separators', () => {
  const array = (columns: string): string =>
    `\\begin{array}{${columns}}1&2\\\\3&4\\end{array}`;

  test('a line between columns takes no room and reaches over all rows', () => {
    const drawing = draw(array('c|c'));
    expect(drawing.width).toBeCloseTo(draw(array('cc')).width, 9);
    const [left, top, right, bottom] = boxOf(shapes(drawing)[0]!);
    expect(right - left).toBeCloseTo(0.4, 9);
    expect(top).toBeCloseTo(0, 6);
    expect(bottom).toBeCloseTo(drawing.height, 6);
  });

  test('a dashed one is stroked', () => {
    expect(shapes(draw(array('c:c')))[0]!.stroke!.dash).toHaveLength(2);
  });
});
