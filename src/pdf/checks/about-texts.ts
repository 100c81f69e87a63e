import type { PaintedText } from '../reading/read-painted.ts';
import type { ReadElement } from '../reading/read-structure.ts';
import type { Check, OpenedPage } from './opened-pdf.ts';

/** Texts: what is shown can be read back, letter by letter or by the text that stands for it (ISO 19005-3, 6.2.11.7). */
export const aboutTexts: Check = {
  about: 'texts',
  find: ({ pages, elements }) => {
    const spoken = spokenContent(elements);
    return pages.flatMap((page) => {
      const findings = page.painted.flatMap((piece) =>
        piece.kind === 'text' ? textFindings(piece, page, spoken) : [],
      );
      return [...new Set(findings)];
    });
  },
};

// ISO 19005-3, 6.2.11.7.2
const unreadable = ['\0', '\uFEFF', '\uFFFE'];

/** Keys of marked sequences whose element has a text of its own to stand for them. */
function spokenContent(elements: readonly ReadElement[]): ReadonlySet<string> {
  return new Set(
    elements
      .filter(({ actualText }) => actualText !== undefined)
      .flatMap(({ kids }) =>
        kids.flatMap((kid) =>
          kid.kind === 'content' ? [`${kid.page} ${kid.mcid}`] : [],
        ),
      ),
  );
}

function textFindings(
  piece: PaintedText,
  page: OpenedPage,
  spoken: ReadonlySet<string>,
): readonly string[] {
  const font = page.fonts.get(piece.font);
  const isSpoken =
    piece.marking.actualText !== undefined ||
    piece.marking.content.some(({ mcid }) => spoken.has(`${page.number} ${mcid}`));
  const where = `on page ${page.label}`;
  const findings = piece.codes.flatMap((code) => {
    const text = font?.texts.get(code) ?? '';
    if (text === '' || unreadable.some((letter) => text.includes(letter)))
      return [`a letter of ${font?.name} ${where} stands for no text`];
    return /\p{Co}/u.test(text) && !isSpoken
      ? [`a letter of private use ${where} has no text that stands for it`]
      : [];
  });
  return /\p{Co}/u.test(piece.marking.actualText ?? '')
    ? [...findings, `a text that stands for marks ${where} has letters of private use`]
    : findings;
}
