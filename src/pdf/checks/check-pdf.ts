import { readPdf } from '../reading/read-pdf.ts';
import { aboutAnnotations } from './about-annotations.ts';
import { aboutAttachments } from './about-attachments.ts';
import { aboutCatalog } from './about-catalog.ts';
import { aboutContent } from './about-content.ts';
import { aboutFile } from './about-file.ts';
import { aboutFonts } from './about-fonts.ts';
import { aboutHeadings } from './about-headings.ts';
import { aboutImages } from './about-images.ts';
import { aboutMetadata } from './about-metadata.ts';
import { aboutNesting } from './about-nesting.ts';
import { aboutOutline } from './about-outline.ts';
import { aboutReferences } from './about-references.ts';
import { aboutStructure } from './about-structure.ts';
import { aboutTables } from './about-tables.ts';
import { aboutTexts } from './about-texts.ts';
import { openForChecks } from './opened-pdf.ts';
import type { Check } from './opened-pdf.ts';

/** Something about a file that is not as a package must be. */
export interface PdfFinding {
  /** What it is about: one of the kinds of check. */
  readonly about: string;
  /** A sentence without its full stop. */
  readonly message: string;
}

const checks: readonly Check[] = [
  aboutFile,
  aboutReferences,
  aboutCatalog,
  aboutMetadata,
  aboutFonts,
  aboutTexts,
  aboutContent,
  aboutImages,
  aboutStructure,
  aboutNesting,
  aboutHeadings,
  aboutTables,
  aboutAnnotations,
  aboutOutline,
  aboutAttachments,
];

/**
 * Checks a file against what PDF/A-3a, PDF/UA-1 and the program's own promises ask of it, as far as
 * that can be told from the file alone. No findings means that none of these checks found anything; it
 * is no proof of conformance, for which validators exist.
 */
export function checkPdf(bytes: Uint8Array): readonly PdfFinding[] {
  const file = readPdf(bytes);
  if ('problem' in file) return [{ about: 'file', message: file.problem }];
  const opened = openForChecks(file);
  const found = checks.flatMap(({ about, find }) =>
    find(opened).map((message) => ({ about, message })),
  );
  return [...found, ...file.faults().map((message) => ({ about: 'file', message }))];
}
