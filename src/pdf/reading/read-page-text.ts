import { pointerOf } from './pdf-object.ts';
import { readContent } from './read-content.ts';
import { fontsOf, readFont } from './read-font.ts';
import type { ReadFont } from './read-font.ts';
import type { ReadPage } from './read-pages.ts';
import { readPainted } from './read-painted.ts';
import type { PaintedPage } from './read-painted.ts';
import type { PdfFile } from './read-pdf.ts';

/** What a page's content paints, and the fonts that it names. */
export interface PageText extends PaintedPage {
  readonly fonts: ReadonlyMap<string, ReadFont>;
}

/**
 * Reads what a page's content paints: its runs of text with their places, its paths and pictures,
 * each with what it belongs to. `known` keeps fonts from page to page by the numbers of their objects.
 */
export function readPageText(
  file: PdfFile,
  page: ReadPage,
  known: Map<number, ReadFont> = new Map<number, ReadFont>(),
): PageText {
  const fonts = new Map<string, ReadFont>();
  for (const [name, object] of fontsOf(file, page.dictionary)) {
    const number = pointerOf(object);
    const font =
      (number === undefined ? undefined : known.get(number)) ?? readFont(file, object);
    if (number !== undefined) known.set(number, font);
    fonts.set(name, font);
  }
  const operations = readContent(file, page);
  if ('problem' in operations)
    return { painted: [], faults: [operations.problem], operators: new Set(), fonts };
  return { ...readPainted(operations, (name) => fonts.get(name)), fonts };
}
