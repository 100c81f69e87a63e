import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { openHyphenator } from '../../src/layout/hyphenate.ts';

const hyphenate = openHyphenator();

describe('openHyphenator', () => {
  test('splits an English word where the patterns allow it', () => {
    expect(hyphenate('reactions')).toEqual(['re', 'ac', 'tions']);
    expect(hyphenate('equilibrium').join('-')).toBe(
      'equi-lib-ri-um'.replace('-um', 'um'),
    );
  });

  test('leaves at least three letters after the last hyphen, punctuation not counted', () => {
    for (const word of ['statically', 'calculated.', 'considerably,', 'deflection)']) {
      const tail = hyphenate(word).at(-1)!;
      expect(tail.replace(/[^a-z]/g, '').length).toBeGreaterThanOrEqual(3);
    }
  });

  test('leaves short words, names, marks and numbers whole', () => {
    for (const word of [
      'beam',
      'Larssen',
      'W12x26',
      '12,500.25',
      'ASCE',
      'self-weight',
    ])
      expect(hyphenate(word)).toEqual([word]);
  });

  test('gives pieces that join to the word, whatever it is', () => {
    fc.assert(
      fc.property(fc.string(), (word) => {
        expect(hyphenate(word).join('')).toBe(word);
      }),
    );
  });
});
