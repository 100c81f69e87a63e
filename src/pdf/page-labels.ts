import { pdfText } from './pdf-text.ts';
import type { PdfDictionary, PdfValue } from './pdfkit-internals.ts';

/**
 * The number tree that tells a viewer what is printed on each page (ISO 32000-1, 12.4.2): a run of
 * labels that count on (`7`, `8`; `S-1`, `S-2`) is one entry, any other label is one of its own.
 */
export function pageLabels(labels: readonly string[]): PdfDictionary {
  const entries: PdfValue[] = [];
  let before: CountedLabel | undefined;
  for (const [index, label] of labels.entries()) {
    const now = readLabel(label);
    const countsOn =
      before?.number !== undefined &&
      now.prefix === before.prefix &&
      now.number === before.number + 1;
    if (!countsOn) entries.push(index, printLabel(now));
    before = now;
  }
  return { Nums: entries };
}

interface CountedLabel {
  readonly prefix: string;
  readonly number: number | undefined;
}

/** Splits `S-12` into what stays and what counts; leading zeros stay. */
function readLabel(label: string): CountedLabel {
  const match = /^(.*?)([1-9]\d{0,8})$/su.exec(label);
  const [, prefix = label, digits] = match ?? [];
  return { prefix, number: digits === undefined ? undefined : Number(digits) };
}

function printLabel({ prefix, number }: CountedLabel): PdfDictionary {
  return {
    S: number === undefined ? undefined : 'D',
    P: prefix === '' ? undefined : pdfText(prefix),
    St: number,
  };
}
