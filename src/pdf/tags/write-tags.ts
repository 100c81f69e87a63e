import { addKeyTree } from '../key-tree.ts';
import type { OpenPdf } from '../open-pdf.ts';
import { pdfText } from '../pdf-text.ts';
import type { PdfDictionary, PdfReference, PdfValue } from '../pdfkit-internals.ts';
import { attributesOf } from './attributes.ts';
import { kidsInOrder } from './kids-in-order.ts';
import type { Kid } from './kids-in-order.ts';
import type { Tags, TaggedElement } from './open-tags.ts';

/** Writes the structure tree (ISO 32000-1, 14.7.2) once all pages are drawn. */
export function writeTags(pdf: OpenPdf, tags: Tags): void {
  const root = pdf.reserve({ Type: 'StructTreeRoot' });
  const kids = kidsInOrder(tags.elements);
  const identifiers: (readonly [string, PdfReference])[] = [];
  for (const tagged of tags.elements) {
    const { element, reference } = tagged;
    const parent =
      element.parent === undefined ? undefined : tags.elements[element.parent];
    // A note is found by its identifier, which PDF/UA-1, 7.9, asks for.
    const identifier = element.type === 'Note' ? `note-${element.id}` : undefined;
    if (identifier !== undefined) identifiers.push([identifier, reference]);
    reference.data = {
      Type: 'StructElem',
      S: element.type,
      P: parent?.reference ?? root,
      ...contentOf(kids.get(tagged) ?? []),
      T: textIfAny(element.title),
      Alt: textIfAny(element.alternate),
      ID: textIfAny(identifier),
      A: attributesOf(element, parent?.element, tags.extents.boundingBox(element.id)),
    };
    reference.end();
  }
  root.data.K = tags.elements.filter(isRoot).map(({ reference }) => reference);
  root.data.ParentTree = addKeyTree(pdf, 'Nums', [...tags.parents]);
  root.data.ParentTreeNextKey = tags.parents.size;
  if (identifiers.length > 0) root.data.IDTree = addKeyTree(pdf, 'Names', identifiers);
  root.end();
  pdf.catalog.StructTreeRoot = root;
  pdf.catalog.MarkInfo = { Marked: true };
}

const isRoot = ({ element }: TaggedElement): boolean => element.parent === undefined;

/** The entries K and Pg: kids in order; a piece on another page than the first says on which. */
function contentOf(kids: readonly Kid[]): PdfDictionary {
  const first = kids.find((kid) => kid.kind === 'item');
  const page = first?.item.page;
  const printed = kids.map((kid): PdfValue => {
    if (kid.kind === 'element') return kid.child.reference;
    const { item } = kid;
    const elsewhere = item.page === page ? undefined : item.page;
    switch (item.kind) {
      case 'annotation':
        return { Type: 'OBJR', Obj: item.annotation, Pg: item.page };
      case 'content':
        return elsewhere === undefined
          ? item.mcid
          : { Type: 'MCR', Pg: elsewhere, MCID: item.mcid };
    }
  });
  return { K: printed.length < 2 ? printed[0] : printed, Pg: page };
}

function textIfAny(text: string | undefined): PdfValue | undefined {
  return text === undefined ? undefined : pdfText(text);
}
