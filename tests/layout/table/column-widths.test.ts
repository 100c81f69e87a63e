import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  columnWidths,
  spreadOut,
  widenForSpan,
} from '../../../src/layout/table/column-widths.ts';

describe('columnWidths', () => {
  test('gives each column what it would like where all fit', () => {
    const wishes = [
      { natural: 50, least: 20 },
      { natural: 80, least: 30 },
    ];
    expect(columnWidths(wishes, 200)).toEqual([50, 80]);
  });

  test('wraps only the widest columns, to one common width', () => {
    const wishes = [
      { natural: 30, least: 30 },
      { natural: 300, least: 40 },
      { natural: 200, least: 40 },
    ];
    const widths = columnWidths(wishes, 230);
    expect(widths[0]).toBe(30);
    expect(widths[1]).toBeCloseTo(100, 6);
    expect(widths[2]).toBeCloseTo(100, 6);
  });

  test('keeps to the least widths as long as it can', () => {
    const wishes = [
      { natural: 300, least: 150 },
      { natural: 300, least: 20 },
    ];
    expect(columnWidths(wishes, 200)[0]).toBeCloseTo(150, 6);
  });

  test('shrinks all alike where not even the least widths fit', () => {
    const wishes = [
      { natural: 100, least: 100 },
      { natural: 60, least: 50 },
    ];
    expect(columnWidths(wishes, 75)).toEqual([50, 25]);
  });

  test('never takes more room than there is, nor more than is wished', () => {
    const wish = fc
      .tuple(
        fc.double({ min: 1, max: 300, noNaN: true }),
        fc.double({ min: 0, max: 1, noNaN: true }),
      )
      .map(([natural, share]) => ({ natural, least: natural * share }));
    fc.assert(
      fc.property(
        fc.array(wish, { minLength: 1, maxLength: 9 }),
        fc.double({ min: 10, max: 800, noNaN: true }),
        (wishes, room) => {
          const widths = columnWidths(wishes, room);
          expect(widths.reduce((sum, width) => sum + width, 0)).toBeLessThanOrEqual(
            room + 1e-6,
          );
          for (const [index, width] of widths.entries())
            expect(width).toBeLessThanOrEqual(wishes[index]!.natural + 1e-9);
        },
      ),
    );
  });
});

describe('widenForSpan', () => {
  test('shares out what a spanning cell lacks, and only among the columns that it spans', () => {
    const wishes = [
      { natural: 10, least: 10 },
      { natural: 20, least: 5 },
      { natural: 20, least: 5 },
    ];
    expect(widenForSpan(wishes, { from: 1, count: 2, natural: 60, least: 10 })).toEqual(
      [
        { natural: 10, least: 10 },
        { natural: 30, least: 5 },
        { natural: 30, least: 5 },
      ],
    );
  });
});

test('columns spread out fill the width, the last one ending at its edge', () => {
  expect(spreadOut([40, 60, 50], 210)).toEqual([70, 90, 50]);
  expect(spreadOut([40, 60], 90)).toEqual([40, 60]);
  expect(spreadOut([40], 90)).toEqual([40]);
});
