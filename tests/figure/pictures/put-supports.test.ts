import { describe, expect, test } from 'vitest';
import { overlaps } from '../../../src/figure/geometry/box.ts';
import { layMember } from '../../support/lay-figures.ts';
import { beam } from '../../support/pictures.ts';

describe('crowded supports', () => {
  test('supports near each other are drawn smaller or lower, never across each other', () => {
    const { obstacles } = layMember(
      beam(100, {
        supports: [
          { x: 50, type: 'roller' },
          { x: 52, type: 'roller' },
        ],
      }),
    );
    // The member first, then the boxes of either symbol.
    const symbols = obstacles.slice(1);
    expect(symbols.length).toBeGreaterThanOrEqual(4);
    const half = symbols.length / 2;
    for (const a of symbols.slice(0, half))
      for (const b of symbols.slice(half)) expect(overlaps(a, b)).toBe(false);
  });
});
