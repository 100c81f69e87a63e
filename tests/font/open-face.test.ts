import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { ownFonts } from '../support/own-fonts.ts';

const text = ownFonts.face('text');
const main = ownFonts.face('KaTeX_Main-Regular');
const sum = (advances: readonly { readonly advance: number }[]): number =>
  advances.reduce((total, { advance }) => total + advance, 0);

describe('a face', () => {
  test.each([
    'text',
    'text-italic',
    'text-bold',
    'KaTeX_Main-Regular',
    'KaTeX_Main-Bold',
  ])('%s sets all ten digits equally wide', (name) => {
    const face = ownFonts.face(name);
    const widths = Array.from('0123456789', (digit) => sum(face.shape(digit)));
    for (const width of widths) expect(width).toBeCloseTo(widths[0]!, 6);
  });

  test('a text face kerns and ligates, and each glyph tells its text', () => {
    expect(sum(text.shape('AV'))).toBeLessThan(
      sum(text.shape('A')) + sum(text.shape('V')),
    );
    expect(text.shape('office').map((glyph) => glyph.text)).toEqual([
      'o',
      'ffi',
      'c',
      'e',
    ]);
  });

  test('an equation face sets one glyph a character at its own advance', () => {
    const word = main.shape('office');
    expect(word.map((glyph) => glyph.text)).toEqual(Array.from('office'));
    expect(sum(word)).toBeCloseTo(
      sum(Array.from('office').map((c) => main.shape(c)[0]!)),
      9,
    );
  });

  test('small capitals are other glyphs than small letters', () => {
    const plain = text.shape('beam').map((glyph) => glyph.id);
    const capitals = text.shape('beam', ['smcp']).map((glyph) => glyph.id);
    expect(capitals).toHaveLength(4);
    expect(capitals).not.toEqual(plain);
  });

  test('tabular figures are asked for by feature and equally wide', () => {
    expect(sum(text.shape('111', ['tnum']))).toBeCloseTo(
      sum(text.shape('888', ['tnum'])),
      9,
    );
  });

  test('a decomposed accent is composed before shaping', () => {
    expect(text.shape('e\u0301')).toEqual(text.shape('é'));
  });

  test('a combining mark that composes with nothing counts as missing', () => {
    expect(text.has(0x0304)).toBe(false);
    expect(() => text.shape('x\u0304')).toThrow(RangeError);
  });

  test.each([text, main])(
    'a character without a glyph is refused by number ($name)',
    (face) => {
      expect(face.has(0x2300)).toBe(false);
      expect(face.glyphFor(0x2300)).toBeUndefined();
      expect(() => face.shape('10 ⌀')).toThrow(/U\+2300/);
    },
  );

  test('widths of words and spaces add up, however a line is split at its spaces', () => {
    const word = fc.string({
      unit: fc.constantFrom(...Array.from('AVTyo.,12fi')),
      minLength: 1,
    });
    fc.assert(
      fc.property(fc.array(word, { minLength: 1, maxLength: 5 }), (words) => {
        const together = sum(text.shape(words.join(' ')));
        const apart =
          words.reduce((total, each) => total + sum(text.shape(each)), 0) +
          (words.length - 1) * sum(text.shape(' '));
        expect(together).toBeCloseTo(apart, 9);
      }),
    );
  });
});
