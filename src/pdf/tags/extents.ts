import type { StructureElement } from '../../layout/index.ts';
import type { Box } from '../marks/box.ts';
import { joinBoxes } from '../marks/box.ts';
import type { PdfReference } from '../pdfkit-internals.ts';

/** How far the elements reach that must say so. */
export interface Extents {
  /** Something of an element stands on a page of a height, points; the extent from the page's top left. */
  readonly add: (
    element: number,
    place: {
      readonly page: PdfReference;
      readonly height: number;
      readonly extent: Box;
    },
  ) => void;
  /** Left, bottom, right, top in the page's coordinates; undefined where an element is on no page, or on several. */
  readonly boundingBox: (element: number) => readonly number[] | undefined;
}

/** Types whose elements state a bounding box where they stand on one page (ISO 32000-1, table 344). */
const bounded: ReadonlySet<StructureElement['type']> = new Set([
  'Figure',
  'Formula',
  'Table',
]);

interface Reach {
  readonly page: PdfReference;
  readonly height: number;
  readonly box: Box;
}

/** Nothing has been drawn yet. */
export function openExtents(elements: readonly StructureElement[]): Extents {
  const within = boundedAround(elements);
  const reaches = new Map<number, Reach | 'several pages'>();
  return {
    add: (element, { page, height, extent }) => {
      for (const id of within[element] ?? []) {
        const known = reaches.get(id);
        if (known === 'several pages') continue;
        if (known === undefined || known.page === page)
          reaches.set(id, { page, height, box: joinBoxes(known?.box, extent) });
        else reaches.set(id, 'several pages');
      }
    },
    boundingBox: (element) => {
      const reach = reaches.get(element);
      if (reach === undefined || reach === 'several pages') return undefined;
      const { box, height } = reach;
      return [box.left, height - box.bottom, box.right, height - box.top].map(
        (length) => Math.round(length * 100) / 100,
      );
    },
  };
}

/** For each element the elements with a bounding box that it is part of, itself among them. */
function boundedAround(
  elements: readonly StructureElement[],
): readonly (readonly number[])[] {
  const around: (readonly number[])[] = [];
  for (const { id, parent, type } of elements) {
    const above = parent === undefined ? [] : (around[parent] ?? []);
    around.push(bounded.has(type) ? [...above, id] : above);
  }
  return around;
}
