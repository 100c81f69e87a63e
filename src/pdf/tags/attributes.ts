import type { StructureElement } from '../../layout/index.ts';
import type { PdfDictionary, PdfValue } from '../pdfkit-internals.ts';

/**
 * The attributes of an element (ISO 32000-1, 14.8.5): what a header cell heads, how many columns a
 * cell spans, where an illustration stands on its page.
 */
export function attributesOf(
  { type, scope, colSpan }: StructureElement,
  parent: StructureElement | undefined,
  boundingBox: readonly number[] | undefined,
): PdfValue | undefined {
  const owners: PdfDictionary[] = [];
  if (scope !== undefined || colSpan !== undefined)
    owners.push({ O: 'Table', Scope: scope, ColSpan: colSpan });
  if (boundingBox !== undefined) {
    const isBlock = type !== 'Table' && !isLine(parent);
    owners.push({
      O: 'Layout',
      Placement: isBlock ? 'Block' : undefined,
      BBox: boundingBox,
    });
  }
  return owners.length < 2 ? owners[0] : owners;
}

/** Types that lines of text are made of: what stands in them stands in the line. */
const lines: ReadonlySet<StructureElement['type']> = new Set([
  'P',
  'H1',
  'H2',
  'H3',
  'Lbl',
  'LBody',
  'TH',
  'TD',
  'Caption',
  'Link',
  'Span',
  'Note',
  'Code',
]);

function isLine(parent: StructureElement | undefined): boolean {
  return parent !== undefined && lines.has(parent.type);
}
