import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { addKeyTree, compareBytes } from '../../src/pdf/key-tree.ts';
import { openPdf } from '../../src/pdf/open-pdf.ts';
import { identifyFile } from '../../src/pdf/file-identity.ts';
import { textBytes } from '../../src/pdf/pdf-text.ts';
import { itemsOf, numberOf, textOf } from '../../src/pdf/reading/pdf-object.ts';
import { readKeyTree } from '../../src/pdf/reading/read-key-tree.ts';
import { readPdf } from '../../src/pdf/reading/read-pdf.ts';
import type { PdfFile } from '../../src/pdf/reading/read-pdf.ts';

/** A file whose catalog has a tree, read back. */
async function fileWith(
  kind: 'Names' | 'Nums',
  keys: readonly (string | number)[],
): Promise<PdfFile> {
  const pdf = await openPdf({ conformance: 'PDF/A-3a' });
  const entries = keys.map((key, index) => [key, index] as const);
  pdf.catalog.Tree = addKeyTree(pdf, kind as never, entries as never);
  const file = readPdf(pdf.finish({ info: {}, id: identifyFile('').id }));
  if ('problem' in file) throw new Error(file.problem);
  return file;
}

describe('a name tree', () => {
  test('has its names in the order of their bytes, capitals first, whatever the language says', async () => {
    const names = ['zeta', 'ch1', 'ha1', 'Zeta', 'alpha', 'Ärger', 'z1', 't1', '½'];
    const file = await fileWith('Names', names);
    const pairs = readKeyTree(file, file.entry(file.catalog, 'Tree'), 'Names');
    expect(pairs.map(([key]) => textOf(key))).toEqual([
      'Zeta',
      'alpha',
      'ch1',
      'ha1',
      't1',
      'z1',
      'zeta',
      '½',
      'Ärger',
    ]);
    expect(pairs.map(([, value]) => names[numberOf(value) ?? -1])).toEqual(
      pairs.map(([key]) => textOf(key)),
    );
  });

  test('is one leaf up to 64 names, and leaves with their limits beyond', async () => {
    const names = Array.from(
      { length: 130 },
      (_, index) => `n${String(index).padStart(3, '0')}`,
    );
    const file = await fileWith('Names', names);
    const kids = itemsOf(file.entry(file.entry(file.catalog, 'Tree'), 'Kids'));
    expect(kids.map((kid) => itemsOf(file.entry(kid, 'Limits')).map(textOf))).toEqual([
      ['n000', 'n063'],
      ['n064', 'n127'],
      ['n128', 'n129'],
    ]);
    const small = await fileWith('Names', names.slice(0, 64));
    expect(itemsOf(small.entry(small.entry(small.catalog, 'Tree'), 'Kids'))).toEqual(
      [],
    );
  });
});

describe('a number tree', () => {
  test('keeps every number with its value, in ascending order', async () => {
    await fc.assert(
      fc.asyncProperty(
        fc.uniqueArray(fc.nat(2000), { maxLength: 200 }),
        async (keys) => {
          const file = await fileWith('Nums', keys);
          const pairs = readKeyTree(file, file.entry(file.catalog, 'Tree'), 'Nums');
          const sorted = [...keys].sort((one, other) => one - other);
          expect(pairs.map(([key]) => numberOf(key))).toEqual(sorted);
          expect(pairs.map(([, value]) => keys[numberOf(value) ?? -1])).toEqual(sorted);
        },
      ),
      { numRuns: 20 },
    );
  });
});

describe('the order of bytes', () => {
  test('puts a beginning before the whole', () => {
    expect(compareBytes(textBytes('B1'), textBytes('B10'))).toBeLessThan(0);
    expect(compareBytes(textBytes('B2'), textBytes('B10'))).toBeGreaterThan(0);
    expect(compareBytes(textBytes('B1'), textBytes('B1'))).toBe(0);
  });
});
