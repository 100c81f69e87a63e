import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { boxAt, overlaps } from '../../../src/figure/geometry/box.ts';
import type { Box } from '../../../src/figure/geometry/box.ts';
import { placeLabels } from '../../../src/figure/labels/place-labels.ts';

const size = { width: 20, height: 8 };
const at = (left: number, top: number = 0): Box => boxAt(left, top, size);
const everywhere = (): boolean => true;

describe('placeLabels', () => {
  test('takes the first place that is free', () => {
    const isFree = (box: Box): boolean => box.left > 10;
    expect(placeLabels([{ candidates: [at(0), at(30), at(60)] }], isFree)).toEqual([
      at(30),
    ]);
  });

  test('a label without any free place is left out', () => {
    expect(placeLabels([{ candidates: [at(0)] }], () => false)).toEqual([undefined]);
  });

  test('the label with fewer choices is served first', () => {
    const [wide, narrow] = placeLabels(
      [{ candidates: [at(0), at(40)] }, { candidates: [at(0)] }],
      everywhere,
    );
    expect(narrow).toEqual(at(0));
    expect(wide).toEqual(at(40));
  });

  test('a neighbour makes way where it can stand elsewhere', () => {
    const placed = placeLabels(
      [
        { candidates: [at(0), at(100)] },
        { candidates: [at(30), at(60)] },
        { candidates: [at(30), at(12)] },
      ],
      everywhere,
    );
    expect(placed).toEqual([at(0), at(60), at(30)]);
  });

  test('no two labels ever overlap, and equal requests get equal answers', () => {
    const candidate = fc
      .tuple(fc.integer({ min: 0, max: 90 }), fc.integer({ min: 0, max: 40 }))
      .map(([left, top]) => at(left, top));
    const requests = fc.array(
      fc.record({ candidates: fc.array(candidate, { maxLength: 6 }) }),
      { maxLength: 12 },
    );
    fc.assert(
      fc.property(requests, (asked) => {
        const placed = placeLabels(asked, everywhere);
        for (const [index, box] of placed.entries()) {
          if (box === undefined) continue;
          expect(asked[index]!.candidates).toContainEqual(box);
          const others = placed.slice(index + 1);
          expect(
            others.some((other) => other !== undefined && overlaps(box, other)),
          ).toBe(false);
        }
        expect(placeLabels(asked, everywhere)).toEqual(placed);
      }),
    );
  });
});
