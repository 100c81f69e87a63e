import type { Bookmark } from '../layout/index.ts';
import type { Destinations } from './destinations.ts';
import type { OpenPdf } from './open-pdf.ts';
import { pdfText } from './pdf-text.ts';
import type { PdfDictionary, PdfReference } from './pdfkit-internals.ts';

/**
 * Writes the bookmarks (ISO 32000-1, 12.3.3). The first row is in sight; those below open on
 * demand, which is what a negative count says.
 */
export function writeOutline(
  pdf: OpenPdf,
  bookmarks: readonly Bookmark[],
  destinations: Destinations,
): void {
  if (bookmarks.length === 0) return;
  const root = pdf.reserve({ Type: 'Outlines', Count: bookmarks.length });
  const { entries } = writeRow(bookmarks, root);
  Object.assign(root.data, entries);
  root.end();
  pdf.catalog.Outlines = root;
  pdf.catalog.PageMode = 'UseOutlines';

  function writeRow(
    row: readonly Bookmark[],
    parent: PdfReference,
  ): { readonly entries: PdfDictionary } {
    const items = row.map(() => pdf.reserve());
    for (const [index, { title, anchor, children }] of row.entries()) {
      const item = items[index];
      if (item === undefined) continue;
      destinations.expect(anchor);
      item.data = {
        Title: pdfText(title),
        Parent: parent,
        Prev: items[index - 1],
        Next: items[index + 1],
        Dest: pdfText(anchor),
        ...(children.length === 0
          ? {}
          : { ...writeRow(children, item).entries, Count: -children.length }),
      };
      item.end();
    }
    return { entries: { First: items[0], Last: items.at(-1) } };
  }
}
