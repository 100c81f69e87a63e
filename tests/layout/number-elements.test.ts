import { expect, test } from 'vitest';
import { elementNode } from '../../src/layout/element-node.ts';
import { numberElements } from '../../src/layout/number-elements.ts';

test('numbers a tree as it is read, parents before their children', () => {
  const link = elementNode('Link');
  const first = elementNode('P', [link]);
  const second = elementNode('P', [], { alternate: 'two' });
  const root = elementNode('Document', [first, second]);
  const { elements, idOf } = numberElements(root);
  expect(elements).toEqual([
    { id: 0, type: 'Document' },
    { id: 1, parent: 0, type: 'P' },
    { id: 2, parent: 1, type: 'Link' },
    { id: 3, parent: 0, type: 'P', alternate: 'two' },
  ]);
  expect([root, first, link, second].map((node) => idOf.get(node))).toEqual([
    0, 1, 2, 3,
  ]);
});
