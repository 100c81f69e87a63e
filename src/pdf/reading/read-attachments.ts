import type { PdfObject } from './pdf-object.ts';
import { bytesOf, itemsOf, nameOf, numberOf, pointerOf, textOf } from './pdf-object.ts';
import { readKeyTree } from './read-key-tree.ts';
import type { PdfFile } from './read-pdf.ts';

/** A file that travels inside a PDF, as it is found there. */
export interface ReadAttachment {
  readonly name: string;
  readonly bytes: Uint8Array;
  /** What the file says of it; undefined where it says nothing. */
  readonly mime: string | undefined;
  readonly description: string | undefined;
  readonly relationship: string | undefined;
  readonly size: number | undefined;
  readonly checkSum: Uint8Array | undefined;
  /** True where the catalog names it as associated with the document. */
  readonly isAssociated: boolean;
}

/** The attachments of a file by the order of their names. */
export function readAttachments(file: PdfFile): readonly ReadAttachment[] {
  const tree = file.entry(file.entry(file.catalog, 'Names'), 'EmbeddedFiles');
  const associated = new Set(itemsOf(file.entry(file.catalog, 'AF')).map(pointerOf));
  return readKeyTree(file, tree, 'Names').map(([key, value]) => {
    const found = readAttachment(file, value, textOf(key) ?? '');
    return { ...found, isAssociated: associated.has(pointerOf(value) ?? -1) };
  });
}

function readAttachment(
  file: PdfFile,
  specification: PdfObject,
  name: string,
): Omit<ReadAttachment, 'isAssociated'> {
  const stream = file.entry(file.entry(specification, 'EF'), 'F');
  const parameters = file.entry(stream, 'Params');
  return {
    name: textOf(file.entry(specification, 'UF')) ?? name,
    bytes: file.decode(stream),
    mime: nameOf(file.entry(stream, 'Subtype')),
    description: textOf(file.entry(specification, 'Desc')),
    relationship: nameOf(file.entry(specification, 'AFRelationship')),
    size: numberOf(file.entry(parameters, 'Size')),
    checkSum: bytesOf(file.entry(parameters, 'CheckSum')),
  };
}
