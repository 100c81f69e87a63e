import { readTrueType } from '../reading/read-true-type.ts';
import type { ReadFont } from '../reading/read-font.ts';
import type { Check, OpenedPage } from './opened-pdf.ts';

/** Fonts: embedded as subsets, with the widths of the font file (ISO 19005-3, 6.2.11). */
export const aboutFonts: Check = {
  about: 'fonts',
  find: ({ fonts, pages }) => {
    const used = usedCodes(pages);
    return fonts.flatMap((font) => [
      ...font.lacks.map((lack) => `${font.name} ${lack}`),
      ...(/^[A-Z]{6}\+./u.test(font.name)
        ? []
        : [`${font.name} is not named as a subset`]),
      ...widthFindings(font, used.get(font) ?? new Set()),
    ]);
  },
};

function usedCodes(
  pages: readonly OpenedPage[],
): ReadonlyMap<ReadFont, ReadonlySet<number>> {
  const used = new Map<ReadFont, Set<number>>();
  for (const { painted, fonts } of pages) {
    for (const piece of painted) {
      const font = piece.kind === 'text' ? fonts.get(piece.font) : undefined;
      if (font === undefined || piece.kind !== 'text') continue;
      const codes = used.get(font) ?? new Set();
      for (const code of piece.codes) codes.add(code);
      used.set(font, codes);
    }
  }
  return used;
}

const tolerance = 1; // thousandths of an em

function widthFindings(font: ReadFont, codes: ReadonlySet<number>): readonly string[] {
  const metrics = readTrueType(font.program);
  if (metrics === undefined) return [`${font.name} is no TrueType file`];
  return [...codes].flatMap((code) => {
    if (code === 0) return [`${font.name} draws the empty box of a missing glyph`];
    const width = metrics.widthOf(code);
    if (width === undefined) return [`${font.name} has no glyph for code ${code}`];
    const isSame = Math.abs(width - font.widthOf(code)) <= tolerance;
    return isSame
      ? []
      : [`${font.name} states another width for code ${code} than its file`];
  });
}
