import type { ReadFont } from '../reading/read-font.ts';
import { readPageText } from '../reading/read-page-text.ts';
import type { PageText } from '../reading/read-page-text.ts';
import { readPages } from '../reading/read-pages.ts';
import type { ReadPage } from '../reading/read-pages.ts';
import type { PdfFile } from '../reading/read-pdf.ts';
import { elementsWithin, readStructure } from '../reading/read-structure.ts';
import type { ReadElement } from '../reading/read-structure.ts';

/** A page with what its content paints. */
export interface OpenedPage extends ReadPage, PageText {}

/** A file read once for all checks. */
export interface OpenedPdf {
  readonly file: PdfFile;
  readonly pages: readonly OpenedPage[];
  /** Every font that a page's resources name, once. */
  readonly fonts: readonly ReadFont[];
  /** The elements at the root of the structure tree, and all elements, parents first. */
  readonly roots: readonly ReadElement[];
  readonly elements: readonly ReadElement[];
}

/** A kind of check: what it is about, and what it finds, a sentence each. */
export interface Check {
  readonly about: string;
  readonly find: (opened: OpenedPdf) => readonly string[];
}

/** Reads all that checks ask about. */
export function openForChecks(file: PdfFile): OpenedPdf {
  const known = new Map<number, ReadFont>();
  const pages = readPages(file).map((page) => ({
    ...page,
    ...readPageText(file, page, known),
  }));
  const fonts = [...new Set(pages.flatMap((page) => [...page.fonts.values()]))];
  const roots = readStructure(file);
  return { file, pages, fonts, roots, elements: roots.flatMap(elementsWithin) };
}
