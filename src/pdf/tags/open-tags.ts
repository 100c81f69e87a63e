import type { StructureElement } from '../../layout/index.ts';
import type { Box } from '../marks/box.ts';
import type { OpenPdf } from '../open-pdf.ts';
import type { PdfReference } from '../pdfkit-internals.ts';
import { openExtents } from './extents.ts';
import type { Extents } from './extents.ts';

/** A piece of an element: a marked sequence of a page's content, or an annotation. */
export type Item = { readonly page: PdfReference; readonly time: number } & (
  | { readonly kind: 'content'; readonly mcid: number }
  | { readonly kind: 'annotation'; readonly annotation: PdfReference }
);

/** An element with its object and the pieces that belong to it directly. */
export interface TaggedElement {
  readonly element: StructureElement;
  readonly reference: PdfReference;
  readonly items: Item[];
  readonly children: TaggedElement[];
}

/** The tags of one page, as its marks are drawn. */
export interface PageTags {
  /** Begins a marked sequence of an element. */
  readonly addContent: (element: number) => {
    readonly type: string;
    readonly mcid: number;
  };
  /** Adds a link to its element and gives the annotation's key in the parent tree. */
  readonly addLink: (element: number, annotation: PdfReference) => number;
  /** An element reaches over a part of the page (points from its top left). */
  readonly addExtent: (element: number, extent: Box) => void;
  /** The page's key in the parent tree; undefined where nothing on it is tagged. */
  readonly key: () => number | undefined;
}

/** The structure of a document, as it is found on its pages. */
export interface Tags {
  readonly elements: readonly TaggedElement[];
  readonly extents: Extents;
  readonly openPage: (page: PdfReference, height: number) => PageTags;
  /** By its key, the element of each marked sequence of a page in order, or that of an annotation. */
  readonly parents: ReadonlyMap<number, readonly PdfReference[] | PdfReference>;
}

/** Gives each element its object. Throws where an element does not stand at its own number. */
export function openTags(pdf: OpenPdf, elements: readonly StructureElement[]): Tags {
  const tagged = elements.map((element, index): TaggedElement => {
    if (element.id !== index)
      throw new RangeError(`Element ${element.id} stands at place ${index}.`);
    return { element, reference: pdf.reserve(), items: [], children: [] };
  });
  const find = (id: number): TaggedElement => {
    const found = tagged[id];
    if (found === undefined) throw new RangeError(`There is no element ${id}.`);
    return found;
  };
  for (const child of tagged) {
    const { id, parent } = child.element;
    if (parent === undefined) continue;
    if (parent >= id)
      throw new RangeError(`Element ${id} is read before its parent ${parent}.`);
    find(parent).children.push(child);
  }
  const parents = new Map<number, readonly PdfReference[] | PdfReference>();
  const extents = openExtents(elements);
  let time = 0;
  return {
    elements: tagged,
    extents,
    parents,
    openPage: (page, height) => {
      const own: PdfReference[] = [];
      let pageKey: number | undefined;
      const nextKey = (value: readonly PdfReference[] | PdfReference): number => {
        const key = parents.size;
        parents.set(key, value);
        return key;
      };
      return {
        addContent: (id) => {
          const { element, reference, items } = find(id);
          const mcid = own.push(reference) - 1;
          items.push({ kind: 'content', page, mcid, time: time++ });
          pageKey ??= nextKey(own);
          return { type: element.type, mcid };
        },
        addLink: (id, annotation) => {
          const { element, reference, items } = find(id);
          if (element.type !== 'Link')
            throw new RangeError(
              `A link stands in element ${id}, which is a ${element.type}.`,
            );
          items.push({ kind: 'annotation', page, annotation, time: time++ });
          return nextKey(reference);
        },
        addExtent: (id, extent) => extents.add(id, { page, height, extent }),
        key: () => pageKey,
      };
    },
  };
}
