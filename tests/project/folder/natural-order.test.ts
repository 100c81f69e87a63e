import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { naturalOrder } from '../../../src/project/folder/natural-order.ts';

const sorted = (names: readonly string[]): readonly string[] =>
  [...names].sort(naturalOrder);

describe('natural order', () => {
  test('counts runs of digits', () => {
    expect(sorted(['b10.yaml', 'b2.yaml', 'b1.yaml', 'a3.yaml'])).toEqual([
      'a3.yaml',
      'b1.yaml',
      'b2.yaml',
      'b10.yaml',
    ]);
    expect(sorted(['B2-10', 'B2-9', 'B2', 'B'])).toEqual(['B', 'B2', 'B2-9', 'B2-10']);
  });

  test('tells names apart that count alike', () => {
    expect(sorted(['b01', 'b1', 'b001'])).toEqual(['b001', 'b01', 'b1']);
  });

  test('is an order: the same whatever order the names come in', () => {
    const name = fc.string({
      unit: fc.constantFrom('a', 'B', '0', '1', '9', '.', '-'),
      maxLength: 6,
    });
    fc.assert(
      fc.property(fc.uniqueArray(name, { maxLength: 8 }), fc.nat(), (names, turn) => {
        const at = names.length === 0 ? 0 : turn % names.length;
        const rotated = [...names.slice(at), ...names.slice(0, at)].reverse();
        expect(sorted(rotated)).toEqual(sorted(names));
      }),
    );
  });
});
