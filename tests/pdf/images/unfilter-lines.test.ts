import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { unfilterLines } from '../../../src/pdf/images/unfilter-lines.ts';

describe('the filters of PNG', () => {
  test('are undone as the standard says', () => {
    const data = Uint8Array.from([
      ...[0, 1, 2, 3],
      ...[1, 1, 1, 1], // sub
      ...[2, 1, 1, 1], // up
      ...[3, 10, 10, 10], // average
      ...[4, 1, 1, 1], // Paeth
    ]);
    expect([...unfilterLines(data, 3, 1)!]).toEqual([
      1, 2, 3, 1, 2, 3, 2, 3, 4, 11, 17, 20, 12, 18, 21,
    ]);
  });

  test('give back any lines that were filtered by them', () => {
    const line = fc.tuple(
      fc.integer({ min: 0, max: 4 }),
      fc.uint8Array({ minLength: 12, maxLength: 12 }),
    );
    fc.assert(
      fc.property(
        fc.array(line, { maxLength: 8 }),
        fc.constantFrom(1, 2, 3, 4),
        (lines, step) => {
          const filtered = lines.flatMap(([filter, samples], index) => {
            const above = lines[index - 1]?.[1] ?? new Uint8Array(12);
            return [
              filter,
              ...Array.from(
                samples,
                (sample, at) =>
                  (sample - guess(filter, { line: samples, above, at, step }) + 256) %
                  256,
              ),
            ];
          });
          const plain = unfilterLines(Uint8Array.from(filtered), 12, step)!;
          expect([...plain]).toEqual(lines.flatMap(([, samples]) => [...samples]));
        },
      ),
    );
  });

  test('are refused where one is unknown or a line is cut short', () => {
    expect(unfilterLines(Uint8Array.from([5, 1, 1]), 2, 1)).toBeUndefined();
    expect(unfilterLines(Uint8Array.from([0, 1, 1, 0]), 2, 1)).toBeUndefined();
  });
});

/** What each filter expects of a sample (ISO/IEC 15948, 9.2), written apart from the code under test. */
function guess(
  filter: number,
  {
    line,
    above,
    at,
    step,
  }: { line: Uint8Array; above: Uint8Array; at: number; step: number },
): number {
  const a = at >= step ? line[at - step]! : 0;
  const b = above[at]!;
  const c = at >= step ? above[at - step]! : 0;
  if (filter === 0) return 0;
  if (filter === 1) return a;
  if (filter === 2) return b;
  if (filter === 3) return Math.floor((a + b) / 2);
  const nearest = [a, b, c].map((value) => Math.abs(a + b - c - value));
  return [a, b, c][nearest.indexOf(Math.min(...nearest))]!;
}
