import { describe, expect, test } from 'vitest';
import { mergeKeyValues } from '../../../src/figure/diagrams/merge-key-values.ts';
import type { Diagram } from '../../../src/figure/index.ts';
import { number, words } from '../../support/pictures.ts';

const scale = { xOf: (x: number) => 10 * x, yOf: (value: number) => -value };
const diagram = (keyValues: Diagram['keyValues']): Diagram => ({
  quantity: 'shear',
  title: words('V'),
  curves: [
    {
      of: {
        pieces: [
          { start: 0, end: 4, coefficients: [5] },
          { start: 4, end: 8, coefficients: [2, 0.1] },
        ],
      },
      style: 'solid',
    },
  ],
  keyValues,
  positive: 'up',
});

describe('mergeKeyValues', () => {
  test('a level stretch is labelled once, in its length', () => {
    const merged = mergeKeyValues(
      diagram([
        { x: 4, value: 5, side: 'left', label: number('5') },
        { x: 0, value: 5, side: 'right', label: number('5'), isExtreme: true },
      ]),
      scale,
    );
    expect(merged).toHaveLength(1);
    expect(merged[0]).toMatchObject({ from: 0, to: 40, key: { isExtreme: true } });
  });

  test('what one station says twice is said once', () => {
    const zero = { x: 4, value: 0, label: number('0') };
    const merged = mergeKeyValues(
      diagram([
        { ...zero, side: 'left' },
        { ...zero, side: 'right' },
      ]),
      scale,
    );
    expect(merged).toHaveLength(1);
  });

  test('equal words where the curve is not level are kept apart', () => {
    const merged = mergeKeyValues(
      diagram([
        { x: 4, value: 2, side: 'right', label: number('2') },
        { x: 8, value: 2.4, side: 'left', label: number('2') },
      ]),
      scale,
    );
    expect(merged).toHaveLength(2);
  });

  test('values come from left to right, the left side of a jump first', () => {
    const merged = mergeKeyValues(
      diagram([
        { x: 8, value: 2.4, label: number('2.4') },
        { x: 4, value: 2, side: 'right', label: number('2') },
        { x: 4, value: 5, side: 'left', label: number('5') },
      ]),
      scale,
    );
    expect(merged.map(({ key }) => key.value)).toEqual([5, 2, 2.4]);
  });
});
