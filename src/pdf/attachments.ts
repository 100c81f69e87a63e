import { addKeyTree } from './key-tree.ts';
import { md5 } from './md5.ts';
import { pdfDate } from './metadata.ts';
import type { OpenPdf } from './open-pdf.ts';
import { pdfText, printName } from './pdf-text.ts';
import type { PdfReference } from './pdfkit-internals.ts';

/** A file that travels inside the package. */
export interface Attachment {
  /** Its name; folders are part of it, with slashes. */
  readonly name: string;
  readonly bytes: Uint8Array;
  /** Media type, `application/yaml`. */
  readonly mime: string;
  /** What it is, in words for who opens the package. */
  readonly description: string;
  /** What it is to the document (ISO 19005-3, 6.8). `Source`: the document was made from it; `Data`: the figures that it states. */
  readonly relationship:
    'Source' | 'Data' | 'Alternative' | 'Supplement' | 'Unspecified';
}

/** Attaches files in the order given; the catalog names them all as associated files. */
export function attachFiles(
  pdf: OpenPdf,
  attachments: readonly Attachment[],
  date: string | undefined,
): void {
  if (attachments.length === 0) return;
  if (pdf.conformance === 'PDF/A-1b')
    throw new RangeError('A file of PDF/A-1 holds no other files.');
  const names = new Set(attachments.map(({ name }) => name));
  if (names.size < attachments.length)
    throw new RangeError('Two attachments have one name.');
  const files = attachments.map(
    (attachment) => [attachment.name, attachFile(pdf, attachment, date)] as const,
  );
  pdf.names.EmbeddedFiles = addKeyTree(pdf, 'Names', files);
  pdf.catalog.AF = files.map(([, file]) => file);
}

function attachFile(
  pdf: OpenPdf,
  { name, bytes, mime, description, relationship }: Attachment,
  date: string | undefined,
): PdfReference {
  const day = date === undefined ? undefined : pdfText(pdfDate(date));
  const file = pdf.addStream(
    {
      Type: 'EmbeddedFile',
      Subtype: printName(mime),
      Params: {
        Size: bytes.length,
        CreationDate: day,
        ModDate: day,
        // The 16 bytes themselves (ISO 32000-1, table 46).
        CheckSum: md5(bytes),
      },
    },
    bytes,
  );
  return pdf.add({
    Type: 'Filespec',
    // Readers that know no UF take F, which is in one-byte letters (ISO 32000-1, table 44).
    F: pdfText(name.replace(/[^\u0020-\u007e]/gu, '_')),
    UF: pdfText(name),
    EF: { F: file, UF: file },
    AFRelationship: relationship,
    Desc: pdfText(description),
  });
}
