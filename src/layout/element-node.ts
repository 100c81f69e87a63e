import type { StructureElement } from './paged-document.ts';

/**
 * An element of the document's structure before it has a number: a tree that blocks build from
 * the leaves up. Marks refer to their node by identity until `numberElements` counts the tree in
 * reading order, so that a part can be laid out without knowing what stands before it.
 */
export interface ElementNode extends Omit<StructureElement, 'id' | 'parent'> {
  readonly children: readonly ElementNode[];
}

/** A node of a type with its children in reading order, and what else is known of it. */
export function elementNode(
  type: StructureElement['type'],
  children: readonly ElementNode[] = [],
  more: Omit<ElementNode, 'type' | 'children'> = {},
): ElementNode {
  return { type, children, ...more };
}
