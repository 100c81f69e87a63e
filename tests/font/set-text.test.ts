import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { measureText, setText } from '../../src/font/index.ts';
import type { TextStyle } from '../../src/font/index.ts';
import { ownFonts } from '../support/own-fonts.ts';

const style: TextStyle = { face: 'text', size: 10, colour: [0, 0, 0] };

describe('setText', () => {
  test('a text that its face covers is one run', () => {
    const { marks, width } = setText(ownFonts, style, 'ΣM = 0');
    expect(marks).toHaveLength(1);
    expect(marks[0]).toMatchObject({
      kind: 'glyphs',
      face: 'text',
      size: 10,
      x: 0,
      y: 0,
    });
    expect(width).toBeCloseTo(
      measureText(ownFonts.face('text'), 10, 'ΣM = 0').width,
      9,
    );
  });

  test('the run changes with the face, and runs follow each other without a gap', () => {
    const { marks, width } = setText(ownFonts, style, 'a ⊥ b');
    expect(marks.map((mark) => mark.face)).toEqual([
      'text',
      'KaTeX_Main-Regular',
      'text',
    ]);
    expect(marks[1]!.x).toBeCloseTo(
      measureText(ownFonts.face('text'), 10, 'a ').width,
      9,
    );
    expect(width).toBeGreaterThan(marks[2]!.x);
  });

  test('the glyphs tell the whole text, in order', () => {
    const characters = fc.constantFrom(...Array.from('ab ΣΔ⊥∥□ffi12²°'));
    fc.assert(
      fc.property(fc.string({ unit: characters }), (text) => {
        const told = setText(ownFonts, style, text).marks.flatMap((mark) =>
          mark.glyphs.map((glyph) => glyph.text),
        );
        expect(told.join('')).toBe(text);
      }),
    );
  });

  test('refuses a character that no face has', () => {
    expect(() => setText(ownFonts, style, '漢')).toThrow(RangeError);
  });
});
