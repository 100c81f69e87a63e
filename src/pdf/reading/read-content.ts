import type { PdfObject } from './pdf-object.ts';
import { isKind } from './pdf-object.ts';
import type { ReadPage } from './read-pages.ts';
import type { PdfFile } from './read-pdf.ts';
import { scanObjects } from './scan-objects.ts';
import { isKeyword } from './scan-words.ts';

/** An operator of a content stream with its operands. */
export interface Operation {
  readonly operator: string;
  readonly operands: readonly PdfObject[];
}

/** The operators of a page's content, or why they cannot be read. */
export function readContent(
  file: PdfFile,
  page: ReadPage,
): readonly Operation[] | { readonly problem: string } {
  const content = file.entry(page.dictionary, 'Contents');
  const parts = isKind(content, 'array') ? content.items : [content];
  const operations: Operation[] = [];
  try {
    for (const part of parts) readOperations(file.decode(part), operations);
  } catch (fault) {
    if (fault instanceof RangeError) return { problem: fault.message };
    throw fault;
  }
  return operations;
}

function readOperations(bytes: Uint8Array, operations: Operation[]): void {
  const scanner = scanObjects(bytes);
  let operands: PdfObject[] = [];
  for (let item = scanner.next(); item !== undefined; item = scanner.next()) {
    if (isKeyword(item)) {
      operations.push({ operator: item.word, operands });
      operands = [];
    } else operands.push(item);
  }
  if (operands.length > 0)
    throw new RangeError('the content ends in the middle of an operator');
}
