import { describe, expect, test } from 'vitest';
import { boxOf, characters, draw, shapes } from '../../support/equations.ts';

describe('bars', () => {
  test('the bar of a fraction lies between its parts, as wide as the wider', () => {
    const drawing = draw('\\frac{1}{222}');
    const [bar, ...others] = shapes(drawing);
    expect(others).toEqual([]);
    const [left, top, right, bottom] = boxOf(bar!);
    const [numerator, denominator] = characters(drawing);
    expect(right - left).toBeCloseTo(15, 6);
    expect(left).toBeCloseTo(denominator!.x, 6);
    expect(bottom - top).toBeCloseTo(0.4, 6);
    expect(top).toBeGreaterThan(numerator!.y);
    expect(bottom).toBeLessThan(denominator!.y - 5);
  });

  test('a dashed line is one dashed stroke', () => {
    const [line] = shapes(draw('\\begin{array}{c}a\\\\\\hdashline b\\end{array}'));
    expect(line!.stroke!.dash).toHaveLength(2);
    expect(line!.fill).toBeUndefined();
  });

  test('what is invisible has no bar', () => {
    expect(shapes(draw('\\phantom{\\frac{1}{2}}x'))).toEqual([]);
  });
});
