import { describe, expect, test } from 'vitest';
import { openFonts } from '../../src/font/index.ts';
import { ownFontFile } from '../support/own-fonts.ts';

describe('the text of a shaped glyph', () => {
  test('is that of the word, whatever was looked up before', () => {
    const before = openFonts(ownFontFile).face('text');
    const after = openFonts(ownFontFile).face('text');
    after.glyphFor(0xfb01);
    after.glyphFor(0x2011);
    for (const word of ['fi', 'office', 'a-b', 'fjord', '12.5']) {
      const texts = after.shape(word).map(({ text }) => text);
      expect(texts.join('')).toBe(word);
      expect(after.shape(word)).toEqual(before.shape(word));
    }
  });

  test('a character that composing turns into one without a glyph counts as missing', () => {
    const face = openFonts(ownFontFile).face('text');
    for (const codePoint of [0x374, 0x387, 0x212b]) {
      if (face.has(codePoint))
        expect(() => face.shape(String.fromCodePoint(codePoint))).not.toThrow();
    }
  });
});
