import type { Drawing } from '../drawing/index.ts';

/** An element of the document's structure, mirrored one to one by the PDF's tags. */
export interface StructureElement {
  /** Number that group marks refer to: the place of the element in `elements`. */
  readonly id: number;
  readonly parent?: number;
  /** A standard structure type of ISO 32000-1, 14.8.4. */
  readonly type:
    | 'Document'
    | 'Part'
    | 'Sect'
    | 'H1'
    | 'H2'
    | 'H3'
    | 'P'
    | 'L'
    | 'LI'
    | 'Lbl'
    | 'LBody'
    | 'Table'
    | 'THead'
    | 'TBody'
    | 'TR'
    | 'TH'
    | 'TD'
    | 'Caption'
    | 'Figure'
    | 'Formula'
    | 'Link'
    | 'Span'
    | 'Note'
    | 'Code'
    | 'Div';
  readonly title?: string;
  /** Spoken text of a figure or formula. */
  readonly alternate?: string;
  readonly scope?: 'Column' | 'Row';
  readonly colSpan?: number;
}

/**
 * One page, printed side up. Every mark belongs to a group with an `element` or an `artifact`, and
 * such groups never stand inside each other: a link or formula in a paragraph interrupts its
 * paragraph. Groups come in reading order; an element that goes on over pages keeps its number.
 */
export interface Page {
  readonly drawing: Drawing;
  /** As printed: `7`. */
  readonly label: string;
}

/** A bookmark and those under it. */
export interface Bookmark {
  readonly title: string;
  readonly anchor: string;
  readonly children: readonly Bookmark[];
}

/** The finished document: nothing after this decides where a mark goes. */
export interface PagedDocument {
  readonly title: string;
  readonly author?: string;
  readonly subject?: string;
  readonly language: string;
  readonly pages: readonly Page[];
  readonly bookmarks: readonly Bookmark[];
  readonly elements: readonly StructureElement[];
  /** Sheet number of every anchor, from 1. */
  readonly sheets: Readonly<Record<string, number>>;
  /** What layout could not settle (page numbers that kept changing). */
  readonly remarks: readonly string[];
}
