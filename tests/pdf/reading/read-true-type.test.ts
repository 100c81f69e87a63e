import { describe, expect, test } from 'vitest';
import { readTrueType } from '../../../src/pdf/reading/read-true-type.ts';
import { ownFonts } from '../../support/own-fonts.ts';

describe('the metrics of a TrueType file', () => {
  test.each(['text', 'text-italic', 'KaTeX_Main-Regular', 'KaTeX_Size1-Regular'])(
    '%s are those of its face',
    (name) => {
      const face = ownFonts.face(name);
      const metrics = readTrueType(face.bytes)!;
      for (const letter of '(1+)=') {
        const glyph = face.glyphFor(letter.codePointAt(0)!);
        if (glyph !== undefined)
          expect(metrics.widthOf(glyph.id)).toBeCloseTo(1000 * glyph.advance, 6);
      }
      expect(metrics.widthOf(65_535)).toBeUndefined();
    },
  );

  test('are not found in what is no font, or a font cut short', () => {
    expect(readTrueType(new Uint8Array())).toBeUndefined();
    expect(
      readTrueType(new TextEncoder().encode('no font at all, only text')),
    ).toBeUndefined();
    expect(readTrueType(ownFonts.face('text').bytes.subarray(0, 400))).toBeUndefined();
  });
});
