import type { LinkMark } from '../../drawing/index.ts';
import { pdfText } from '../pdf-text.ts';
import type { PdfDictionary } from '../pdfkit-internals.ts';
import type { PagePen, Surroundings } from './page-pen.ts';

const printed = 4; // annotation flag Print (ISO 32000-1, table 165), which PDF/A asks for

/** Lays a link over the page; its Link element knows it, and it knows its element. */
export function drawLink(mark: LinkMark, around: Surroundings, pen: PagePen): void {
  const { owner } = around;
  if (owner?.kind !== 'element')
    throw new RangeError(`The link “${mark.says}” belongs to no element.`);
  const left = around.x + mark.x;
  const top = pen.height - (around.y + mark.y);
  const annotation = pen.pdf.reserve({
    Type: 'Annot',
    Subtype: 'Link',
    Rect: [left, top - mark.height, left + mark.width, top].map(round),
    Border: [0, 0, 0],
    F: printed,
    Contents: pdfText(mark.says),
    ...target(mark, pen),
  });
  annotation.data.StructParent = pen.tags.addLink(owner.element, annotation);
  annotation.end();
  pen.annotations.push(annotation);
}

function target({ to }: LinkMark, pen: PagePen): PdfDictionary {
  if (!('anchor' in to))
    return { A: { S: 'URI', URI: pdfText(asciiAddress(to.address)) } };
  pen.destinations.expect(to.anchor);
  return { Dest: pdfText(to.anchor) };
}

/** A web address in the ASCII that a URI action asks for (ISO 32000-1, 12.6.4.7): other letters percent-encoded. */
function asciiAddress(address: string): string {
  return address
    .replace(/\p{Surrogate}/gu, '\uFFFD')
    .replace(/[^\u0021-\u007e]/gu, (letter) => encodeURIComponent(letter));
}

const round = (length: number): number => Math.round(length * 1000) / 1000;
