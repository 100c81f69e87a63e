import type { ElementNode } from './element-node.ts';
import type { StructureElement } from './paged-document.ts';

/** The elements of a document in reading order, and the number of each node of the tree. */
export interface NumberedElements {
  readonly elements: readonly StructureElement[];
  readonly idOf: ReadonlyMap<ElementNode, number>;
}

/** Numbers a tree of elements from 0 as it is read: a parent before its children. */
export function numberElements(root: ElementNode): NumberedElements {
  const elements: StructureElement[] = [];
  const idOf = new Map<ElementNode, number>();
  const visit = (
    { children, ...own }: ElementNode,
    node: ElementNode,
    parent?: number,
  ): void => {
    const id = elements.length;
    elements.push(parent === undefined ? { id, ...own } : { id, parent, ...own });
    idOf.set(node, id);
    for (const child of children) visit(child, child, id);
  };
  visit(root, root);
  return { elements, idOf };
}
