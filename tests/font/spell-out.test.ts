import { describe, expect, test } from 'vitest';
import { codePoint, spellOut } from '../../src/font/index.ts';
import { ownFonts } from '../support/own-fonts.ts';

describe('spellOut', () => {
  test('writes a character without a glyph as its number, and tells of each once', () => {
    expect(spellOut(ownFonts, 'text', 'a中b中☃')).toEqual({
      text: 'a[U+4E2D]b[U+4E2D][U+2603]',
      missing: ['中', '☃'],
    });
  });

  test('leaves alone what some face has', () => {
    expect(spellOut(ownFonts, 'text', 'Größe □ ∠')).toEqual({
      text: 'Größe □ ∠',
      missing: [],
    });
  });
});

describe('codePoint', () => {
  test('writes a character’s number as Unicode does', () => {
    expect(codePoint('A')).toBe('U+0041');
    expect(codePoint('😀')).toBe('U+1F600');
  });
});
