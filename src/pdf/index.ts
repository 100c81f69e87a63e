/**
 * Writes pages to PDF.
 *
 * The writer decides nothing: every mark of a `PagedDocument` is drawn where it stands, and its group
 * says whose it is. What is written round the marks is what makes a package last and be read by
 * everybody: PDF/A-3a for the archive (fonts embedded, one colour space, dates and identifiers from
 * the inputs alone, the input files attached) and PDF/UA-1 for who cannot see it (a tree of
 * structure that mirrors the document's elements, spoken figures and equations).
 *
 *     PagedDocument ─ writePage ─▶ content, links   marks/   one kind of mark, one file
 *                   ─ writeTags ─▶ structure tree   tags/
 *                   ─ outline, destinations, labels, metadata, attachments ─▶ bytes
 *
 * PDFKit numbers and prints objects and cuts font subsets, in `open-pdf.ts` alone; all else is the
 * room's own, because the same document must give the same bytes in every zone, language and release
 * of Node. What was written is read back without PDFKit (reading/: `readPdf` and what follows it) and
 * held against what the standards and the program itself promise (checks/: `checkPdf`).
 *
 * @module
 */
export { writePdf } from './write-pdf.ts';
export type { WriteOptions } from './write-pdf.ts';
export type { Attachment } from './attachments.ts';
export { packageAttachments } from './package-attachments.ts';
export type { Conformance } from './open-pdf.ts';
export { imageProblem } from './images/read-picture.ts';
export { md5 } from './md5.ts';
export { brokenObjects } from './reading/broken-objects.ts';
export { readPdf } from './reading/read-pdf.ts';
export type { PdfFile } from './reading/read-pdf.ts';
export { readAttachments } from './reading/read-attachments.ts';
export type { ReadAttachment } from './reading/read-attachments.ts';
export { readMetadata } from './reading/read-metadata.ts';
export type { ReadMetadata } from './reading/read-metadata.ts';
export { readPages } from './reading/read-pages.ts';
export type { ReadPage } from './reading/read-pages.ts';
export { readDestinations, readOutline } from './reading/read-outline.ts';
export type { ReadBookmark, ReadDestination } from './reading/read-outline.ts';
export { elementsWithin, readStructure } from './reading/read-structure.ts';
export type { ReadElement, ReadKid } from './reading/read-structure.ts';
export { readPageText } from './reading/read-page-text.ts';
export type { PageText } from './reading/read-page-text.ts';
export { checkPdf } from './checks/check-pdf.ts';
export type { PdfFinding } from './checks/check-pdf.ts';
