import { describe, expect, test } from 'vitest';
import { outlineText } from '../../src/font/index.ts';
import { ownFonts } from '../support/own-fonts.ts';

const face = ownFonts.face('text-bold');

describe('outlineText', () => {
  test('outlines letters on their baseline, y down, from 0 to the width', () => {
    const { path, width } = outlineText(face, 100, 'HI');
    const points = path.flatMap((step) => {
      const [, ...numbers] = step;
      return numbers.length === 0 ? [] : [numbers.slice(-2) as [number, number]];
    });
    const ys = points.map(([, y]) => y);
    expect(Math.max(...ys)).toBeCloseTo(0, 6);
    // Bold capitals stand a little lower than the height that the file states for the family.
    expect(Math.min(...ys)).toBeCloseTo(-65.7, 6);
    expect(Math.max(...points.map(([x]) => x))).toBeLessThan(width);
    expect(path.filter(([letter]) => letter === 'Z')).toHaveLength(2);
  });

  test('turns the quadratic curves of TrueType into cubic ones through the same points', () => {
    const { path } = outlineText(face, 100, 'O');
    expect(path.some(([letter]) => letter === 'C')).toBe(true);
    expect(path.every(([letter]) => ['M', 'L', 'C', 'Z'].includes(letter))).toBe(true);
  });

  test('grows with the size', () => {
    expect(outlineText(face, 20, 'VOID').width).toBeCloseTo(
      2 * outlineText(face, 10, 'VOID').width,
      9,
    );
  });
});
