import { describe, expect, test } from 'vitest';
import { ownFonts } from '../../support/own-fonts.ts';
import { characters, draw, runs } from '../../support/equations.ts';

describe('glyphs', () => {
  test('digits are equally wide', () => {
    const widths = Array.from('0123456789', (digit) => draw(digit).width);
    for (const width of widths) expect(width).toBeCloseTo(5, 9);
  });

  test('a number is one run of glyphs at the font’s own advances', () => {
    const [run, ...others] = runs(draw('1250'));
    expect(others).toEqual([]);
    expect(run!.glyphs.map(({ x }) => x)).toEqual([0, 5, 10, 15]);
    const one = ownFonts.face('KaTeX_Main-Regular').glyphFor(0x31)!;
    expect(run!.glyphs[0]!.id).toBe(one.id);
  });

  test('each style has its face', () => {
    const face = (tex: string): string => characters(draw(tex))[0]!.face;
    expect(face('x')).toBe('KaTeX_Math-Italic');
    expect(face('\\mathrm{x}')).toBe('KaTeX_Main-Regular');
    expect(face('\\mathbf{x}')).toBe('KaTeX_Main-Bold');
    expect(face('\\boldsymbol{x}')).toBe('KaTeX_Math-BoldItalic');
    expect(face('\\text{x}')).toBe('KaTeX_Main-Regular');
    expect(face('\\text{\\textbf{\\textit{x}}}')).toBe('KaTeX_Main-BoldItalic');
    expect(face('\\checkmark')).toBe('KaTeX_AMS-Regular');
    expect(face('\\bigl(')).toBe('KaTeX_Size1-Regular');
  });

  test('the turning arrows of moment signs are drawn', () => {
    expect(
      characters(draw('\\circlearrowleft\\curvearrowleft')).map((c) => c.text),
    ).toEqual(['↺', '↶']);
  });
});
