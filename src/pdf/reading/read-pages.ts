import type { PdfObject } from './pdf-object.ts';
import { itemsOf, nameOf, numberOf, pointerOf, textOf } from './pdf-object.ts';
import { readKeyTree } from './read-key-tree.ts';
import type { PdfFile } from './read-pdf.ts';

/** A page of a file. */
export interface ReadPage {
  /** The number of its object. */
  readonly number: number;
  readonly dictionary: PdfObject;
  /** Points. */
  readonly width: number;
  readonly height: number;
  /** What a viewer calls it. */
  readonly label: string;
}

/** The pages of a file in order, each with what it inherits from the nodes above it. */
export function readPages(file: PdfFile): readonly ReadPage[] {
  const pages: Omit<ReadPage, 'label'>[] = [];
  const seen = new Set<number>();
  const visit = (node: PdfObject, inherited: PdfObject): void => {
    const number = pointerOf(node);
    if (number === undefined || seen.has(number)) return;
    seen.add(number);
    const box = file.entry(node, 'MediaBox') ?? inherited;
    if (nameOf(file.entry(node, 'Type')) === 'Page') {
      const [left = 0, bottom = 0, right = 0, top = 0] = itemsOf(box).map(
        (side) => numberOf(file.resolve(side)) ?? 0,
      );
      const dictionary = file.resolve(node);
      pages.push({ number, dictionary, width: right - left, height: top - bottom });
    }
    for (const kid of itemsOf(file.entry(node, 'Kids'))) visit(kid, box);
  };
  const root = rawEntry(file, 'Pages');
  visit(root, null);
  const labels = readLabels(file, pages.length);
  return pages.map((page, index) => ({ ...page, label: labels[index] ?? '' }));
}

function rawEntry(file: PdfFile, key: string): PdfObject {
  const { catalog } = file;
  if (catalog === null || typeof catalog !== 'object' || catalog.kind !== 'dictionary')
    return null;
  return catalog.entries.get(key) ?? null;
}

/** The labels of so many pages; decimal numbers and prefixes, which are all that the program writes. */
function readLabels(file: PdfFile, count: number): readonly string[] {
  const ranges = readKeyTree(file, file.entry(file.catalog, 'PageLabels'), 'Nums');
  const labels = Array.from({ length: count }, (_, index) => String(index + 1));
  for (const [place, [key, range]] of ranges.entries()) {
    const start = Math.max(0, numberOf(key) ?? 0);
    const end = numberOf(ranges[place + 1]?.[0] ?? null) ?? count;
    const prefix = textOf(file.entry(range, 'P')) ?? '';
    const first = numberOf(file.entry(range, 'St')) ?? 1;
    const isCounted = file.entry(range, 'S') !== null;
    for (let index = start; index < Math.min(end, count); index += 1)
      labels[index] = `${prefix}${isCounted ? first + index - start : ''}`;
  }
  return labels;
}
