import type { PdfObject } from './pdf-object.ts';
import { numberOr } from './pdf-object.ts';
import { readKeyTree } from './read-key-tree.ts';
import type { PdfFile } from './read-pdf.ts';

/** The entries of the structure's parent tree by their keys, as they stand (ISO 32000-1, 14.7.4.4). */
export function readParentTree(file: PdfFile): ReadonlyMap<number, PdfObject> {
  const tree = file.entry(file.entry(file.catalog, 'StructTreeRoot'), 'ParentTree');
  return new Map(
    readKeyTree(file, tree, 'Nums').map(([key, value]) => [numberOr(key, -1), value]),
  );
}
