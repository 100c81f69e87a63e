import { describe, expect, test } from 'vitest';
import { fallbackFor, missingCharacters } from '../../src/font/index.ts';
import { ownFonts } from '../support/own-fonts.ts';

describe('the face of a character', () => {
  test.each(Array.from('²³⁴·−×°′″≤≥→ΔΣΩµφ±≈√∞∂✓☐½€„“”«»–—…łőŽ'))(
    '%s is in every text face itself',
    (character) => {
      for (const base of ['text', 'text-italic', 'text-semibold', 'text-bold']) {
        expect(fallbackFor(ownFonts, character, base)?.name).toBe(base);
      }
    },
  );

  test.each([
    ['⊥', 'text', 'KaTeX_Main-Regular'],
    ['∥', 'text', 'KaTeX_Main-Regular'],
    ['⇒', 'text-bold', 'KaTeX_Main-Bold'],
    ['□', 'text', 'KaTeX_AMS-Regular'],
    ['ϕ', 'text', 'KaTeX_Math-Italic'],
    ['é', 'KaTeX_Main-Regular', 'text'],
  ])('%s, asked of %s, comes from %s', (character, base, face) => {
    expect(fallbackFor(ownFonts, character, base)?.name).toBe(face);
  });

  test('a character that no face has is told as a value, once', () => {
    expect(fallbackFor(ownFonts, '漢', 'text')).toBeUndefined();
    expect(missingCharacters(ownFonts, 'text', 'Beam 漢 on wall ⌀ 漢')).toEqual([
      '漢',
      '⌀',
    ]);
    expect(missingCharacters(ownFonts, 'text-bold', 'ΣM = 0, ∥ and ⊥')).toEqual([]);
  });
});
