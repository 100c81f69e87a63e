import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { pageLabels } from '../../src/pdf/page-labels.ts';
import { readPages, readPdf } from '../../src/pdf/index.ts';
import { documentOf, page, write } from '../support/paged-documents.ts';

/** The labels as plain values: page index, prefix, first number. */
function entries(labels: readonly string[]): readonly unknown[] {
  const nums = pageLabels(labels).Nums as readonly unknown[];
  return nums.map((item) =>
    typeof item === 'number'
      ? item
      : Object.fromEntries(
          Object.entries(item as object).flatMap(([key, value]) =>
            value === undefined
              ? []
              : [[key, typeof value === 'object' ? String(value) : value]],
          ),
        ),
  );
}

describe('page labels', () => {
  test('that count on are one entry', () => {
    expect(entries(['1', '2', '3'])).toEqual([0, { S: 'D', St: 1 }]);
    expect(entries(['S-8', 'S-9', 'S-10'])).toEqual([0, { S: 'D', P: 'S-', St: 8 }]);
  });

  test('begin anew where the prefix or the count changes', () => {
    expect(entries(['i', '1', '2', '5', 'A1', 'B2'])).toEqual([
      0,
      { P: 'i' },
      1,
      { S: 'D', St: 1 },
      3,
      { S: 'D', St: 5 },
      4,
      { S: 'D', P: 'A', St: 1 },
      5,
      { S: 'D', P: 'B', St: 2 },
    ]);
  });

  test('are read back as they were printed, whatever they are', async () => {
    const label = fc.oneof(
      fc.nat(30).map(String),
      fc.constantFrom('', '0', '007', 'A-09', 'A-10', 'Ü 1', 'v2.0', '12345678901'),
    );
    await fc.assert(
      fc.asyncProperty(
        fc.array(label, { minLength: 1, maxLength: 8 }),
        async (labels) => {
          const file = readPdf(
            await write(
              documentOf(
                ['Document'],
                labels.map((text) => page(text, [])),
              ),
            ),
          );
          if ('problem' in file) throw new Error(file.problem);
          expect(readPages(file).map((read) => read.label)).toEqual(labels);
        },
      ),
      { numRuns: 30 },
    );
  });
});
