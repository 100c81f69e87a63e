import type { PdfObject } from './pdf-object.ts';
import { itemsOf } from './pdf-object.ts';
import type { PdfFile } from './read-pdf.ts';

/** The pairs of a name tree or a number tree in their order, keys and values as they stand. */
export function readKeyTree(
  file: PdfFile,
  root: PdfObject,
  kind: 'Names' | 'Nums',
): readonly (readonly [key: PdfObject, value: PdfObject])[] {
  const pairs: (readonly [PdfObject, PdfObject])[] = [];
  const seen = new Set<PdfObject>();
  const visit = (node: PdfObject): void => {
    const found = file.resolve(node);
    if (found === null || seen.has(found)) return;
    seen.add(found);
    const items = itemsOf(file.entry(found, kind));
    for (let index = 0; index + 1 < items.length; index += 2)
      pairs.push([file.resolve(items[index] ?? null), items[index + 1] ?? null]);
    for (const kid of itemsOf(file.entry(found, 'Kids'))) visit(kid);
  };
  visit(root);
  return pairs;
}
