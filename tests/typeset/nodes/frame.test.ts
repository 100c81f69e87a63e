import { describe, expect, test } from 'vitest';
import { boxOf, draw, shapes } from '../../support/equations.ts';

describe('boxes', () => {
  test('a box lies around its content, its border inside its edge', () => {
    const drawing = draw('\\boxed{1}');
    const [frame] = shapes(drawing);
    expect(frame!.stroke).toEqual({ width: 0.4, colour: [0, 0, 0] });
    expect(frame!.fill).toBeUndefined();
    const [left, top, right, bottom] = boxOf(frame!);
    expect([left, right]).toEqual([0.2, expect.closeTo(drawing.width - 0.2, 9)]);
    expect([top, bottom]).toEqual([
      expect.closeTo(0.2, 3),
      expect.closeTo(drawing.height - 0.2, 3),
    ]);
  });

  test('a coloured box is painted before its content', () => {
    const { marks } = draw('\\fcolorbox{red}{yellow}{1}');
    expect(marks.map((mark) => mark.kind)).toEqual(['shape', 'glyphs']);
    expect(marks[0]).toMatchObject({ fill: [1, 1, 0], stroke: { colour: [1, 0, 0] } });
    expect(shapes(draw('\\colorbox{yellow}{1}'))[0]!.stroke).toBeUndefined();
  });

  test('an angle has a top and a right side alone', () => {
    const [corner] = shapes(draw('\\angl{n}'));
    expect(corner!.path).toHaveLength(7);
    expect(corner!.stroke).toBeUndefined();
  });
});
