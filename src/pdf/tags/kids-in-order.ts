import type { Item, TaggedElement } from './open-tags.ts';

/** What an element holds, in reading order. */
export type Kid =
  | { readonly kind: 'element'; readonly child: TaggedElement }
  | { readonly kind: 'item'; readonly item: Item };

/**
 * For every element its kids: the child elements in the document's order, and between them the
 * element's own pieces, each before the first child that begins on the pages after it.
 */
export function kidsInOrder(
  elements: readonly TaggedElement[],
): ReadonlyMap<TaggedElement, readonly Kid[]> {
  const begins = beginnings(elements);
  return new Map(
    elements.map((element) => [element, mergeKids(element, begins)] as const),
  );
}

/** When each element is first drawn, its children counted; undefined for one that never is. */
function beginnings(
  elements: readonly TaggedElement[],
): ReadonlyMap<TaggedElement, number> {
  const begins = new Map<TaggedElement, number>();
  // From the last to the first: children stand behind their parents.
  for (const element of [...elements].reverse()) {
    let begin = element.items[0]?.time ?? Infinity;
    for (const child of element.children)
      begin = Math.min(begin, begins.get(child) ?? Infinity);
    if (begin < Infinity) begins.set(element, begin);
  }
  return begins;
}

function mergeKids(
  { items, children }: TaggedElement,
  begins: ReadonlyMap<TaggedElement, number>,
): readonly Kid[] {
  const kids: Kid[] = [];
  let next = 0;
  for (const child of children) {
    const begin = begins.get(child);
    for (let item = items[next]; item !== undefined; item = items[next]) {
      if (begin === undefined || item.time > begin) break;
      kids.push({ kind: 'item', item });
      next += 1;
    }
    kids.push({ kind: 'element', child });
  }
  for (const item of items.slice(next)) kids.push({ kind: 'item', item });
  return kids;
}
