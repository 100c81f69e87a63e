import type { OpenPdf } from './open-pdf.ts';
import { pdfText, textBytes } from './pdf-text.ts';
import type { PdfReference, PdfValue } from './pdfkit-internals.ts';

const mostInLeaf = 64;

/**
 * Writes a name tree or a number tree (ISO 32000-1, 7.9.6 and 7.9.7) and gives its root: one leaf where
 * the entries fit in it, else a root over leaves of 64. Names are sorted by their bytes, as the
 * standard asks, whatever the order of letters is where the program runs.
 */
export function addKeyTree<Key extends string | number>(
  pdf: OpenPdf,
  kind: Key extends string ? 'Names' : 'Nums',
  entries: readonly (readonly [Key, PdfValue])[],
): PdfReference {
  const sorted = [...entries].sort(([one], [other]) => compareKeys(one, other));
  if (sorted.length <= mostInLeaf) return pdf.add({ [kind]: printEntries(sorted) });
  const kids: PdfReference[] = [];
  for (let start = 0; start < sorted.length; start += mostInLeaf) {
    const part = sorted.slice(start, start + mostInLeaf);
    const limits = [part[0], part.at(-1)].map((entry) => printKey(entry?.[0] ?? 0));
    kids.push(pdf.add({ Limits: limits, [kind]: printEntries(part) }));
  }
  return pdf.add({ Kids: kids });
}

function printEntries(
  entries: readonly (readonly [string | number, PdfValue])[],
): readonly PdfValue[] {
  return entries.flatMap(([key, value]) => [printKey(key), value]);
}

const printKey = (key: string | number): PdfValue =>
  typeof key === 'string' ? pdfText(key) : key;

function compareKeys(one: string | number, other: string | number): number {
  if (typeof one === 'number' || typeof other === 'number')
    return Number(one) - Number(other);
  return compareBytes(textBytes(one), textBytes(other));
}

/** Orders byte strings as dictionaries order words: by the first byte that differs, a beginning before the whole. */
export function compareBytes(one: Uint8Array, other: Uint8Array): number {
  const length = Math.min(one.length, other.length);
  for (let index = 0; index < length; index += 1) {
    const difference = (one[index] ?? 0) - (other[index] ?? 0);
    if (difference !== 0) return difference;
  }
  return one.length - other.length;
}
