import type { GlyphsMark } from '../../drawing/index.ts';
import type { EmbeddedFace } from '../embedded-fonts.ts';
import { formatNumbers } from '../format-number.ts';
import { own } from './own.ts';
import type { PagePen, Surroundings } from './page-pen.ts';

/** Draws a run of glyphs as one text object. */
export function drawGlyphs(mark: GlyphsMark, around: Surroundings, pen: PagePen): void {
  const [first] = mark.glyphs;
  if (first === undefined) return;
  const { size } = mark;
  const embedded = pen.fonts(mark.face);
  const { show, width } = showGlyphs(mark, embedded);
  const left = around.x + mark.x + first.x;
  const baseline = around.y + mark.y;
  const { ascent, descent } = embedded.face;
  own(around, pen, {
    left,
    right: left + width,
    top: baseline - ascent * size,
    bottom: baseline + descent * size,
  });
  pen.resources.useFont(embedded.id, embedded.reference);
  pen.content.fillWith(mark.colour);
  pen.content.writeIn(embedded.id, size);
  pen.content.add(`BT ${formatNumbers(left, pen.height - baseline)} Td ${show} ET`);
}

/**
 * The operator that shows a run (ISO 32000-1, 9.4.3). A reader moves on by each glyph's own
 * advance; where a glyph stands elsewhere (kerning, stretched spaces) the difference is written in
 * whole thousandths of an em, each counted from where the reader really is, so that no error grows.
 */
function showGlyphs(
  { glyphs, size, face }: GlyphsMark,
  { codeFor }: EmbeddedFace,
): { readonly show: string; readonly width: number } {
  if (!(size > 0)) throw new RangeError(`A run in ${face} has the size ${size}.`);
  const start = glyphs[0]?.x ?? 0;
  let at = 0;
  let text = '';
  let isMoved = false;
  for (const glyph of glyphs) {
    const move = Math.round(at - ((glyph.x - start) * 1000) / size);
    if (move !== 0) {
      text += `>${move}<`;
      at -= move;
      isMoved = true;
    }
    const { hex, advance } = codeFor(glyph);
    text += hex;
    at += advance * 1000;
  }
  const show = isMoved ? `[<${text}>] TJ` : `<${text}> Tj`;
  return { show, width: (at * size) / 1000 };
}
