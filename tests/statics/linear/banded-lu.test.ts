import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  factorBandedLu,
  solveBandedLu,
} from '../../../src/statics/linear/banded-lu.ts';
import { exact, rounded } from '../../../src/statics/linear/double-double.ts';
import { factorLu, solveLu } from '../../../src/statics/linear/lu.ts';

describe('factorBandedLu and solveBandedLu', () => {
  test('exchange rows where the diagonal is empty', () => {
    const rows = [
      { first: 1, entries: [exact(2)] },
      { first: 0, entries: [exact(3), exact(1)] },
    ];
    const x = solveBandedLu(factorBandedLu(rows), [exact(4), exact(5)]);
    expect(x.map(rounded)).toEqual([1, 2]);
  });

  test('agree with the dense factors on random bands of any width', () => {
    const size = fc.integer({ min: 1, max: 9 });
    const entry = fc.integer({ min: -9, max: 9 });
    fc.assert(
      fc.property(
        size,
        fc.array(entry, { minLength: 81, maxLength: 81 }),
        fc.integer({ min: 0, max: 3 }),
        (n, entries, width) => {
          const matrix = Array.from({ length: n }, (_, i) =>
            Array.from({ length: n }, (__, j) =>
              Math.abs(i - j) > width ? 0 : entries[9 * i + j]! + (i === j ? 11.5 : 0),
            ),
          );
          const right = matrix.map((_, i) => entries[i]! + 1);
          const rows = matrix.map((row, i) => {
            const first = Math.max(0, i - width);
            return { first, entries: row.slice(first, i + width + 1).map(exact) };
          });
          let dense: readonly number[];
          try {
            dense = solveLu(factorLu(matrix), right);
          } catch {
            return;
          }
          const x = solveBandedLu(factorBandedLu(rows), right.map(exact)).map(rounded);
          const scale = Math.max(1, ...dense.map(Math.abs));
          for (const [i, value] of x.entries())
            expect(Math.abs(value - dense[i]!)).toBeLessThanOrEqual(1e-9 * scale);
        },
      ),
    );
  });

  test('do not mind rows of very unlike units', () => {
    const rows = [
      { first: 0, entries: [exact(1e-12), exact(2e-12)] },
      { first: 0, entries: [exact(3e9), exact(-1e9)] },
    ];
    const x = solveBandedLu(factorBandedLu(rows), [exact(5e-12), exact(1e9)]);
    expect(x.map(rounded)).toEqual([1, 2]);
  });

  test('refuse a matrix with an empty column', () => {
    const rows = [
      { first: 1, entries: [exact(1)] },
      { first: 1, entries: [exact(1)] },
    ];
    expect(() => factorBandedLu(rows)).toThrow('no pivot in column 0');
  });
});
