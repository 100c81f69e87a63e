import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { neverBreak } from '../../src/layout/band.ts';
import type { Band } from '../../src/layout/band.ts';
import { paginate } from '../../src/layout/paginate.ts';
import { placeBands } from '../../src/layout/place-bands.ts';

function band(height: number, more: Partial<Band> = {}): Band {
  return { height, above: 0, below: 0, breakBefore: 0, pieces: [], ...more };
}

const tied: Partial<Band> = { breakBefore: neverBreak };

/** Where the pages begin. */
function starts(bands: readonly Band[], height: number): readonly number[] {
  return paginate(bands, height).map(({ from }) => from);
}

describe('paginate', () => {
  test('fills pages to the brim where nothing speaks against it', () => {
    const bands = Array.from({ length: 25 }, () => band(10));
    expect(starts(bands, 100)).toEqual([0, 10, 20]);
  });

  test('gives no page at all to no bands', () => {
    expect(paginate([], 100)).toEqual([]);
  });

  test('moves a heading to the page of its text', () => {
    const bands = [
      ...Array.from({ length: 9 }, () => band(10)),
      band(10),
      band(10, tied),
    ];
    expect(starts(bands, 100)).toEqual([0, 9]);
  });

  test('counts the gap between neighbours but none at the top of a page', () => {
    const bands = [
      band(40, { below: 10 }),
      band(50, { above: 20 }),
      band(50, { above: 50 }),
    ];
    expect(starts(bands, 110)).toEqual([0, 2]);
    expect(starts(bands, 109)).toEqual([0, 1, 2]);
  });

  test('would rather break between paragraphs than within a costly table', () => {
    const bands = Array.from({ length: 14 }, (_, index) =>
      band(10, index >= 9 && index <= 11 ? { breakBefore: 50 } : {}),
    );
    expect(starts(bands, 100)).toEqual([0, 8]);
  });

  test('breaks at a forbidden place only where a page cannot be made otherwise', () => {
    const bands = Array.from({ length: 15 }, () => band(10, tied));
    const pages = paginate(bands, 100);
    expect(pages).toHaveLength(2);
    expect(pages.every(({ from, to }) => to - from <= 10)).toBe(true);
  });

  test('leaves no page but the last less than a third full', () => {
    const bands = [
      band(20),
      band(95, tied),
      ...Array.from({ length: 8 }, () => band(10)),
    ];
    const [first] = paginate(bands, 100);
    expect(first).toEqual({ from: 0, to: 1 });
    const loose = [band(20), band(95), band(60), band(10)];
    expect(starts(loose, 100)[1]).toBe(1);
    const choice = [band(60), band(20), band(90), band(50)];
    expect(starts(choice, 100)).toEqual([0, 2, 3]);
  });

  test('puts a band taller than a page on a page of its own', () => {
    const bands = [band(50), band(150), band(50)];
    expect(starts(bands, 100)).toEqual([0, 1, 2]);
  });

  test('keeps room for what a page repeats at its top', () => {
    const head = band(20);
    const rows = Array.from({ length: 12 }, () => band(10, { repeats: [head] }));
    expect(starts([head, ...rows], 100)).toEqual([0, 9]);
    const placed = placeBands([head, ...rows], { from: 9, to: 13 });
    expect(placed.map(({ y }) => y)).toEqual([0, 20, 30, 40, 50]);
  });

  test('gives no room to a gap at the top of a further page', () => {
    const bands = [band(90), band(30, { isGap: true }), band(80)];
    expect(starts(bands, 100)).toEqual([0, 1]);
    expect(placeBands(bands, { from: 1, to: 3 }).map(({ y }) => y)).toEqual([0, 0]);
  });

  const randomBands = fc.array(
    fc.record({
      height: fc.integer({ min: 1, max: 60 }),
      above: fc.integer({ min: 0, max: 12 }),
      below: fc.integer({ min: 0, max: 12 }),
      breakBefore: fc.constantFrom(0, 0, 0, 1.5, 12, 120, neverBreak),
    }),
    { minLength: 1, maxLength: 60 },
  );

  test('places every band once and in order, and no page is overfull', () => {
    fc.assert(
      fc.property(randomBands, (seeds) => {
        const bands = seeds.map((seed) => band(seed.height, seed));
        const pages = paginate(bands, 100);
        expect(pages[0]!.from).toBe(0);
        expect(pages.at(-1)!.to).toBe(bands.length);
        for (const [index, page] of pages.entries()) {
          expect(page.to).toBeGreaterThan(page.from);
          if (index > 0) expect(page.from).toBe(pages[index - 1]!.to);
          const last = placeBands(bands, page).at(-1)!;
          expect(last.y + last.band.height).toBeLessThanOrEqual(100 + 1e-6);
        }
      }),
    );
  });

  test('costs no more than any other way to break the same bands', () => {
    const few = fc.array(
      fc.record({
        height: fc.integer({ min: 5, max: 50 }),
        breakBefore: fc.constantFrom(0, 1.5, 12, 120),
      }),
      { minLength: 1, maxLength: 11 },
    );
    fc.assert(
      fc.property(few, (seeds) => {
        const bands = seeds.map((seed) => band(seed.height, seed));
        const best = costOf(
          bands,
          paginate(bands, 100).map(({ to }) => to),
        );
        for (const way of waysToBreak(bands.length)) {
          expect(best).toBeLessThanOrEqual(costOf(bands, way) + 1e-6);
        }
      }),
      { numRuns: 40 },
    );
  });

  test('never changes a page for what follows a later page start that it shares', () => {
    fc.assert(
      fc.property(randomBands, randomBands, (seeds, more) => {
        const bands = seeds.map((seed) => band(seed.height, seed));
        const longer = [...bands, ...more.map((seed) => band(seed.height, seed))];
        const before = starts(bands, 100);
        const after = starts(longer, 100);
        const shared = before.filter((start) => after.includes(start)).at(-1)!;
        expect(after.slice(0, after.indexOf(shared))).toEqual(
          before.slice(0, before.indexOf(shared)),
        );
      }),
    );
  });
});

/** Every list of places where the pages of so many bands may end. */
function waysToBreak(count: number): readonly (readonly number[])[] {
  return Array.from({ length: 2 ** (count - 1) }, (_, code) => [
    ...Array.from({ length: count - 1 }, (__, bit) => bit + 1).filter(
      (place) => (code >> (place - 1)) % 2 === 1,
    ),
    count,
  ]);
}

/** The cost of paginate's own words, worked the slow way: a price a page, emptiness, breaks. */
function costOf(bands: readonly Band[], ends: readonly number[]): number {
  let from = 0;
  let cost = 0;
  for (const to of ends) {
    const used = bands.slice(from, to).reduce((sum, { height }) => sum + height, 0);
    if (used > 100) return Infinity;
    const isLast = to === bands.length;
    cost += 4 + (isLast ? 0 : 250 * (1 - used / 100) ** 2);
    if (!isLast && used < 100 / 3) cost += 2000;
    if (!isLast) cost += bands[to]!.breakBefore;
    from = to;
  }
  return cost;
}
