import type { FontBook } from '../font/index.ts';
import type { PagedDocument } from '../layout/index.ts';
import { attachFiles } from './attachments.ts';
import type { Attachment } from './attachments.ts';
import { openDestinations } from './destinations.ts';
import { embedFonts } from './embedded-fonts.ts';
import { identifyFile } from './file-identity.ts';
import { embedImages } from './images/embed-images.ts';
import { informationOf, xmpOf } from './metadata.ts';
import type { Metadata } from './metadata.ts';
import { openPdf } from './open-pdf.ts';
import type { Conformance } from './open-pdf.ts';
import { writeOutline } from './outline.ts';
import { pageLabels } from './page-labels.ts';
import { pdfText } from './pdf-text.ts';
import { openTags } from './tags/open-tags.ts';
import { writeTags } from './tags/write-tags.ts';
import { writePage } from './write-page.ts';

/** What writing takes besides the document. */
export interface WriteOptions {
  readonly fonts: FontBook;
  /** The pictures that image marks name, PNG or JPEG, by their `source`. */
  readonly images?: Readonly<Record<string, Uint8Array>>;
  readonly attachments?: readonly Attachment[];
  /** The program and its version, as the file is to say. */
  readonly producer: string;
  /** A text that stands for all that went into the document; the file identifier is made from it. */
  readonly inputs: string;
  /** The day that the file is dated, as `2026-03-14`, at 00:00 Greenwich; absent: it bears no date. */
  readonly date?: string;
  /** Default: `PDF/A-3a`, with PDF/UA-1. */
  readonly conformance?: Conformance;
  /** Packs objects into streams: less than half the bytes, and no longer readable by eye. Default: false. */
  readonly isPacked?: boolean;
}

/**
 * Writes a document as PDF: each mark where it stands, tags, bookmarks, page labels, metadata and
 * attachments around them. The same document and options give the same bytes on any machine. Throws
 * RangeError where the document contradicts itself: a mark that nobody owns, a link that leads
 * nowhere, a picture that cannot be read (see `imageProblem`).
 */
export async function writePdf(
  document: PagedDocument,
  options: WriteOptions,
): Promise<Uint8Array> {
  const { conformance = 'PDF/A-3a', attachments = [], images = {}, date } = options;
  const metadata = metadataOf(document, options, conformance);
  const pdf = await openPdf({ conformance, isPacked: options.isPacked ?? false });
  const tags = openTags(pdf, document.elements);
  const destinations = openDestinations();
  const fonts = embedFonts(pdf, options.fonts);
  const tools = { pdf, fonts, images: embedImages(pdf, images), tags, destinations };
  for (const page of document.pages) writePage(page, tools);
  writeTags(pdf, tags);
  writeOutline(pdf, document.bookmarks, destinations);
  destinations.write(pdf);
  attachFiles(pdf, attachments, date);
  Object.assign(pdf.catalog, {
    Lang: pdfText(document.language),
    PageLabels: pageLabels(document.pages.map(({ label }) => label)),
    ViewerPreferences: pdf.reserve({ DisplayDocTitle: true }),
    Metadata: pdf.addStream({ Type: 'Metadata', Subtype: 'XML' }, xmpOf(metadata)),
  });
  return pdf.finish({ info: informationOf(metadata), id: metadata.identity.id });
}

function metadataOf(
  { title, author, subject, language }: PagedDocument,
  { producer, inputs, date }: WriteOptions,
  conformance: Conformance,
): Metadata {
  return {
    title,
    ...(author === undefined ? {} : { author }),
    ...(subject === undefined ? {} : { subject }),
    language,
    producer,
    ...(date === undefined ? {} : { date }),
    identity: identifyFile(inputs),
    conformance,
  };
}
