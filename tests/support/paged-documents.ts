import type { Colour, GlyphsMark, GroupMark, Mark } from '../../src/drawing/index.ts';
import { setText } from '../../src/font/index.ts';
import type { Page, PagedDocument, StructureElement } from '../../src/layout/index.ts';
import { writePdf } from '../../src/pdf/index.ts';
import type { WriteOptions } from '../../src/pdf/index.ts';
import { ownFonts } from './own-fonts.ts';

const black: Colour = [0, 0, 0];

/** A text on a baseline, 10 pt and upright unless asked otherwise. */
export function words(
  text: string,
  at: { x?: number; y?: number; size?: number; face?: string; colour?: Colour } = {},
): readonly GlyphsMark[] {
  const { x = 0, y = 0, size = 10, face = 'text', colour = black } = at;
  const { marks } = setText(ownFonts, { face, size, colour }, text);
  return marks.map((mark) => ({ ...mark, x: mark.x + x, y }));
}

/** Marks of an element, moved to (x, y). */
export function of(
  element: number,
  x: number,
  y: number,
  marks: readonly Mark[],
): GroupMark {
  return { kind: 'group', x, y, element, marks };
}

/** Marks that are no part of the text. */
export function artifact(
  marks: readonly Mark[],
  kind: 'pagination' | 'layout' = 'pagination',
): GroupMark {
  return { kind: 'group', x: 0, y: 0, artifact: kind, marks };
}

/** A sheet of paper, 612 × 792 pt. */
export function page(label: string, marks: readonly Mark[]): Page {
  return { label, drawing: { width: 612, height: 792, marks } };
}

/** Elements from a tree in brackets: each is a type, what is known of it, and its children. */
export type Tree = readonly [
  type: StructureElement['type'],
  more?: Partial<StructureElement>,
  children?: readonly Tree[],
];

/** Numbers a tree as it is read. */
export function elementsOf(tree: Tree): readonly StructureElement[] {
  const elements: StructureElement[] = [];
  const visit = ([type, more = {}, children = []]: Tree, parent?: number): void => {
    const id = elements.length;
    elements.push({ id, type, ...more, ...(parent === undefined ? {} : { parent }) });
    for (const child of children) visit(child, id);
  };
  visit(tree);
  return elements;
}

/** A document of pages and elements; a title, a language and no bookmarks unless given. */
export function documentOf(
  tree: Tree,
  pages: readonly Page[],
  more: Partial<PagedDocument> = {},
): PagedDocument {
  return {
    title: 'Footbridge at Alder Weir',
    language: 'en',
    pages,
    bookmarks: [],
    elements: elementsOf(tree),
    sheets: {},
    remarks: [],
    ...more,
  };
}

/** A document of one paragraph with some marks in it. */
export function documentWith(...marks: readonly Mark[]): PagedDocument {
  return documentOf(['Document', {}, [['P']]], [page('1', [of(1, 72, 100, marks)])]);
}

/** Writes a document with the program's own fonts. */
export function write(
  document: PagedDocument,
  options: Partial<WriteOptions> = {},
): Promise<Uint8Array> {
  return writePdf(document, {
    fonts: ownFonts,
    producer: 'sumzero 0.0',
    inputs: 'the inputs of a test',
    ...options,
  });
}
