import { describe, expect, test } from 'vitest';
import { boxOf, characters, draw, shapes } from '../../support/equations.ts';

describe('pictures', () => {
  test('the roof of a root ends where its content ends', () => {
    const drawing = draw('\\sqrt{12}');
    const [left, , right] = boxOf(shapes(drawing)[0]!);
    const [one] = characters(drawing);
    expect(left).toBeGreaterThanOrEqual(0);
    expect(right).toBeCloseTo(one!.x + 10, 6);
  });

  test('a brace is three pieces over its whole width', () => {
    const pieces = shapes(draw('\\underbrace{1+2+3+4+5}_{n}')).map(boxOf);
    expect(pieces).toHaveLength(3);
    const width = Math.max(...pieces.map((box) => box[2]));
    expect(Math.min(...pieces.map((box) => box[0]))).toBeLessThan(0.5);
    expect(width).toBeGreaterThan(50);
    for (const [left, , right] of pieces)
      expect(right - left).toBeLessThan(0.52 * width);
  });

  test('a strike goes from corner to corner of what it cancels', () => {
    const drawing = draw('\\cancel{111}');
    const [strike, ...others] = shapes(drawing);
    expect(others).toEqual([]);
    const [left, , right] = boxOf(strike!);
    const [first] = characters(drawing);
    expect(left).toBeLessThan(first!.x);
    expect(right).toBeGreaterThan(first!.x + 15);
    expect(strike!.path).toHaveLength(7);
  });

  test('\\bcancel falls, \\cancel rises, \\xcancel does both', () => {
    const starts = (tex: string): readonly number[] =>
      shapes(draw(tex)).map(({ path }) => (path[0] as ['M', number, number])[2]);
    const [rising] = starts('\\cancel{11}');
    const [falling] = starts('\\bcancel{11}');
    expect(rising).toBeGreaterThan(falling!);
    expect(shapes(draw('\\xcancel{11}'))).toHaveLength(2);
  });

  test('no number of a path leaves the drawing by more than an em', () => {
    for (const tex of [
      '\\sqrt{x}',
      '\\overrightarrow{AB}',
      '\\xrightarrow{abc}',
      '\\phase{x}',
    ]) {
      const drawing = draw(tex);
      for (const shape of shapes(drawing)) {
        for (const value of shape.path.flatMap((step) => step.slice(1) as number[])) {
          expect(Math.abs(value)).toBeLessThan(
            Math.max(drawing.width, drawing.height) + 10,
          );
        }
      }
    }
  });

  test('a vector arrow stands over its letter', () => {
    const drawing = draw('\\vec{F}');
    const [, top, , bottom] = boxOf(shapes(drawing)[0]!);
    expect(bottom).toBeLessThan(characters(drawing)[0]!.y - 6);
    expect(top).toBeGreaterThanOrEqual(-0.5);
  });
});
