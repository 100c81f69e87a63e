import type { Face, MeasuredGlyph } from '../../font/index.ts';
import { faceName } from '../equation-face.ts';
import type { NodeSetter } from '../node-setter.ts';
import { refuse } from '../typeset-fault.ts';

/**
 * Characters side by side at the advances of the font file. KaTeX's own widths are not used:
 * they are those of the first of several merged characters, and differ from the font's for some.
 */
export const setGlyphs: NodeSetter<'glyphs'> = (node, own, { fonts }) => {
  const { scale, colour } = own;
  const face = fonts.face(faceName(own.family, own.bold, own.italic));
  const glyphs = glyphsOf(face, node.text);
  let width = 0;
  for (const glyph of glyphs) width += glyph.advance * scale;
  return {
    width,
    fills: false,
    place: (pen, x, y) => {
      if (colour !== undefined)
        pen.glyphs({ face: face.name, scale, colour, glyphs }, x, y);
    },
  };
};

function glyphsOf(face: Face, text: string): readonly MeasuredGlyph[] {
  return Array.from(text, (character) => {
    const codePoint = character.codePointAt(0) ?? 0;
    const glyph = face.glyphFor(codePoint);
    if (glyph !== undefined) return glyph;
    const number = codePoint.toString(16).toUpperCase().padStart(4, '0');
    return refuse(
      `the character "${character}" (U+${number}), missing from ${face.name},`,
    );
  });
}
