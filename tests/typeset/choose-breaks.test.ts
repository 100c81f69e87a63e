import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { chooseBreaks } from '../../src/typeset/choose-breaks.ts';
import type { LineRoom, SegmentMeasure } from '../../src/typeset/choose-breaks.ts';

const room: LineRoom = { width: 10, first: 0, atRelation: 1, atOther: 2 };

const segment = (
  width: number,
  startsWith: SegmentMeasure['startsWith'] = 'term',
  level = 0,
): SegmentMeasure => ({ gap: 0.2, width, startsWith, level });

const linesOf = (segments: readonly SegmentMeasure[]): readonly (readonly number[])[] =>
  chooseBreaks(segments, room).map(({ from, to }) => [from, to]);

describe('choosing breaks', () => {
  test('one line where all fits', () => {
    expect(linesOf([segment(4, 'other'), segment(5)])).toEqual([[0, 2]]);
  });

  test('further lines begin where they are told', () => {
    const lines = chooseBreaks(
      [segment(8, 'other'), segment(7, 'relation'), segment(7)],
      room,
    );
    expect(lines.map(({ x }) => x)).toEqual([0, 1, 2]);
  });

  test('rather an outer break and one line more than a break within brackets', () => {
    const inner = [segment(3, 'other'), segment(3.5, 'term', 0), segment(4, 'term', 1)];
    expect(linesOf(inner)).toEqual([
      [0, 1],
      [1, 3],
    ]);
  });

  test('within brackets where no other break helps', () => {
    const inner = [
      segment(6, 'other', 0),
      segment(6, 'term', 1),
      segment(6, 'term', 1),
    ];
    expect(linesOf(inner)).toEqual([
      [0, 1],
      [1, 2],
      [2, 3],
    ]);
  });

  test('between terms rather than between factors', () => {
    const product = [segment(3, 'other'), segment(3, 'term'), segment(4.5, 'factor')];
    expect(linesOf(product)).toEqual([
      [0, 1],
      [1, 3],
    ]);
  });

  test('at a relation rather than at a term nearby', () => {
    const both = [
      segment(6, 'other'),
      segment(2, 'relation'),
      segment(1, 'term'),
      segment(3),
    ];
    expect(linesOf(both)).toEqual([
      [0, 1],
      [1, 4],
    ]);
  });

  test('what cannot be broken stays too wide', () => {
    expect(linesOf([segment(50, 'other')])).toEqual([[0, 1]]);
  });

  test('every segment is on one line, in order, and lines fit where segments do', () => {
    const any = fc.record({
      gap: fc.constantFrom(0, 0.2),
      width: fc.double({ min: 0.1, max: 7.9, noNaN: true }),
      startsWith: fc.constantFrom<SegmentMeasure['startsWith']>(
        'relation',
        'term',
        'factor',
      ),
      level: fc.integer({ min: 0, max: 2 }),
    });
    fc.assert(
      fc.property(fc.array(any, { minLength: 1, maxLength: 30 }), (segments) => {
        const lines = chooseBreaks(segments, room);
        const order = lines.flatMap(({ from, to }) =>
          Array.from({ length: to - from }, (_, index) => from + index),
        );
        expect(order).toEqual(segments.map((_, index) => index));
        for (const { from, to, x } of lines) {
          const own = segments.slice(from, to);
          const first = from === 0 ? 0 : own[0]!.gap;
          const width = own.reduce((sum, each) => sum + each.gap + each.width, -first);
          expect(x + width).toBeLessThanOrEqual(room.width + 1e-6);
        }
      }),
    );
  });
});
