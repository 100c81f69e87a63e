import { describe, expect, test } from 'vitest';
import { openWords } from '../../src/layout/words.ts';
import { ownFonts } from '../support/own-fonts.ts';

const look = { face: 'text', size: 10, colour: [0, 0, 0] } as const;

describe('openWords', () => {
  test('sets the same word once', () => {
    const set = openWords(ownFonts, () => undefined).inLook(look);
    expect(set('reaction')).toBe(set('reaction'));
  });

  test('tells looks apart that differ in any respect', () => {
    const words = openWords(ownFonts, () => undefined);
    const width = (more: object): number =>
      words.inLook({ ...look, ...more })('reaction').width;
    expect(width({ size: 20 })).toBeCloseTo(2 * width({}), 9);
    expect(width({ face: 'text-bold' })).not.toBe(width({}));
    expect(width({ features: ['smcp'] })).not.toBe(width({}));
  });

  test('spells out a character without a glyph and tells of it', () => {
    const missing: string[] = [];
    const words = openWords(ownFonts, (character) => missing.push(character));
    const { marks } = words.inLook(look)('a中b');
    const text = marks
      .flatMap(({ glyphs }) => glyphs.map((glyph) => glyph.text))
      .join('');
    expect(text).toBe('a[U+4E2D]b');
    expect(missing).toEqual(['中']);
  });

  test('takes a character that the face lacks from a face that has it', () => {
    const missing: string[] = [];
    const words = openWords(ownFonts, (character) => missing.push(character));
    const { marks } = words.inLook(look)('□∠');
    expect(marks.every(({ face }) => face.startsWith('KaTeX_'))).toBe(true);
    expect(missing).toEqual([]);
  });

  test('draws a no-break hyphen as a hyphen, so that searching finds it', () => {
    const { marks } = openWords(ownFonts, () => undefined).inLook(look)('B\u20111');
    expect(marks[0]!.glyphs.map((glyph) => glyph.text).join('')).toBe('B-1');
  });
});
