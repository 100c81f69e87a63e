import { describe, expect, test } from 'vitest';
import { measureText } from '../../src/font/index.ts';
import { ownFonts } from '../support/own-fonts.ts';

describe('measureText', () => {
  const face = ownFonts.face('text');

  test('gives the width in points and each glyph at its offset', () => {
    const { width, glyphs } = measureText(face, 10, '12');
    expect(glyphs.map((glyph) => glyph.text)).toEqual(['1', '2']);
    expect(glyphs[0]!.x).toBe(0);
    expect(glyphs[1]!.x).toBeCloseTo(5, 6); // a digit is half an em
    expect(width).toBeCloseTo(10, 6);
  });

  test('grows in proportion to the size', () => {
    const small = measureText(face, 7, 'Shear force').width;
    expect(measureText(face, 21, 'Shear force').width).toBeCloseTo(3 * small, 9);
  });

  test('an empty text is nothing wide', () => {
    expect(measureText(face, 10, '')).toEqual({ width: 0, glyphs: [] });
  });
});
