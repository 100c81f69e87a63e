import { zlibSync } from 'fflate';
import { joinBytes, openOutput } from './output.ts';
import type { Output } from './output.ts';
import { finishPacked } from './pack-objects.ts';
import { openPackedOutput } from './packed-output.ts';
import type {
  PdfDictionary,
  PdfReference,
  PdfkitDocument,
  PdfkitFont,
} from './pdfkit-internals.ts';

/**
 * What a file promises. `PDF/A-3a` stands for PDF/A-3a and PDF/UA-1 together and is what a package
 * is issued as; `PDF/A-1b` is the same file without attachments, for validators that know no more.
 */
export type Conformance = 'PDF/A-3a' | 'PDF/A-1b';

/** A PDF file under construction. */
export interface OpenPdf {
  readonly conformance: Conformance;
  readonly catalog: PdfDictionary;
  /** The catalog's name trees. */
  readonly names: PdfDictionary;
  /** The page tree's root, parent of every page. */
  readonly pages: PdfReference;
  /** A number for an object that is written later, by `end`. */
  readonly reserve: (data?: PdfDictionary) => PdfReference;
  /** Writes an object. */
  readonly add: (data: PdfDictionary) => PdfReference;
  /** Writes a stream, deflated unless it brings a filter of its own or is metadata, which stays readable as it is. */
  readonly addStream: (data: PdfDictionary, bytes: Uint8Array) => PdfReference;
  readonly addPage: (page: PdfReference) => void;
  readonly openFont: (name: string, bytes: Uint8Array) => PdfkitFont;
  /** Writes what is left and gives the file. Throws where a reserved object was never written. */
  readonly finish: (ending: PdfEnding) => Uint8Array;
}

/** What the file's last part says. */
export interface PdfEnding {
  /** The information dictionary; texts only. */
  readonly info: Readonly<Record<string, string>>;
  /** File identifier: 16 bytes. */
  readonly id: Uint8Array;
}

/** How a file is made. */
export interface OpenOptions {
  readonly conformance: Conformance;
  /** Packs objects into streams, which makes tagged files less than half as large; not for PDF/A-1. */
  readonly isPacked?: boolean;
}

/** Opens a PDF file. PDFKit is loaded here, so that reading a file never waits for it. */
export async function openPdf({
  conformance,
  isPacked = false,
}: OpenOptions): Promise<OpenPdf> {
  if (isPacked && conformance === 'PDF/A-1b')
    throw new RangeError('A file of PDF/A-1 has no packed objects.');
  const { default: PDFDocument } = await import('pdfkit');
  // No page and no font of PDFKit's choice, no deflating by the machine's own library.
  const options = {
    pdfVersion: conformance === 'PDF/A-3a' ? '1.7' : '1.4',
    subset: conformance,
    autoFirstPage: false,
    font: '',
    compress: false,
    fontLayoutCache: false,
  };
  const packed = isPacked ? openPackedOutput() : undefined;
  const output = packed ?? openOutput();
  const document = new (class extends PDFDocument {
    // Everything is collected as it is printed; PDFKit's stream is never used.
    _write(data: string | Uint8Array): void {
      (this as unknown as PdfkitDocument)._offset += output.add(data);
    }
  })(options as object) as unknown as PdfkitDocument;
  // Tags and metadata are the writer's own.
  document.endMarkings = () => undefined;
  document.endMetadata = () => undefined;
  document.endSubset = () => document._addColorOutputIntent();
  const reserve = document.ref.bind(document);
  document.ref = (data) => deflatedAtEnd(reserve(data));
  if (packed !== undefined) {
    const tools = { reserve, deflated: deflatedAtEnd, kept: packed.kept };
    document._finalize = () => finishPacked(document, tools);
  }
  return facade(conformance, document, { reserve, output });
}

interface Insides {
  readonly reserve: PdfkitDocument['ref'];
  readonly output: Output;
}

function facade(
  conformance: Conformance,
  document: PdfkitDocument,
  { reserve, output }: Insides,
): OpenPdf {
  const catalog = document._root.data;
  const pages = catalog.Pages as PdfReference;
  const names: PdfDictionary = {};
  (catalog.Names as PdfReference).data = names;
  const add = (data: PdfDictionary, bytes?: Uint8Array): PdfReference => {
    const reference = reserve(data);
    reference.end(bytes);
    return reference;
  };
  return {
    conformance,
    catalog,
    names,
    pages,
    reserve,
    add,
    addStream: (data, bytes) =>
      hasOwnPacking(data)
        ? add(data, bytes)
        : add({ ...data, Filter: 'FlateDecode' }, zlibSync(bytes)),
    addPage: (page) => {
      (pages.data.Kids as PdfReference[]).push(page);
      pages.data.Count = Number(pages.data.Count) + 1;
    },
    openFont: (name, bytes) => {
      document.registerFont(name, bytes);
      document.font(name);
      return document._font;
    },
    finish: ({ info, id }) => {
      document.info = { ...info };
      document._id = id;
      document.end();
      if (document._waiting !== 0)
        throw new Error(`${document._waiting} objects of the file were never written.`);
      return output.bytes();
    },
  };
}

/** True of a stream that stays as it is: one with a filter of its own, or metadata, which anything must be able to read. */
function hasOwnPacking({ Filter, Type }: PdfDictionary): boolean {
  return Filter !== undefined || Type === 'Metadata';
}

/**
 * Deflates a stream that PDFKit writes by itself (font files, colour profile) when it ends, with
 * fflate as all others: its bytes depend on no machine and no release of Node.
 */
function deflatedAtEnd(reference: PdfReference): PdfReference {
  const print = reference.finalize.bind(reference);
  reference.finalize = () => {
    const { data, buffer } = reference;
    if (buffer.length > 0 && !hasOwnPacking(data)) {
      reference.buffer = [zlibSync(joinBytes(buffer))];
      data.Filter = 'FlateDecode';
    }
    print();
  };
  return reference;
}
