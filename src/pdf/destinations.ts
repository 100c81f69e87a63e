import { addKeyTree } from './key-tree.ts';
import type { OpenPdf } from './open-pdf.ts';
import type { PdfReference } from './pdfkit-internals.ts';

/** The places that links and bookmarks lead to, by name. */
export interface Destinations {
  /** An anchor stands on a page, y points above its foot. The first of a name is the one. */
  readonly add: (name: string, page: PdfReference, y: number) => void;
  /** Something leads to a name, which the document must have in the end. */
  readonly expect: (name: string) => void;
  /** Writes them. Throws where something leads to a name that is nowhere. */
  readonly write: (pdf: OpenPdf) => void;
}

/** No place has a name yet. */
export function openDestinations(): Destinations {
  const places = new Map<string, readonly (PdfReference | string | number | null)[]>();
  const expected = new Set<string>();
  return {
    add: (name, page, y) => {
      if (places.has(name)) return;
      // A place keeps the reader's zoom and side; only the height is asked for.
      places.set(name, [page, 'XYZ', null, Math.round(y * 1000) / 1000, null]);
    },
    expect: (name) => {
      expected.add(name);
    },
    write: (pdf) => {
      for (const name of expected)
        if (!places.has(name)) throw new RangeError(`Nothing is called “${name}”.`);
      if (places.size === 0) return;
      pdf.names.Dests = addKeyTree(pdf, 'Names', [...places]);
    },
  };
}
