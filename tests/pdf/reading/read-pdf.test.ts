import { spawnSync } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  checkPdf,
  readAttachments,
  readMetadata,
  readOutline,
  readPageText,
  readPages,
  readPdf,
  readStructure,
} from '../../../src/pdf/index.ts';
import type { PdfFile } from '../../../src/pdf/index.ts';
import { numberOf, textOf } from '../../../src/pdf/reading/pdf-object.ts';
import { amendPdf } from '../../support/amend-pdf.ts';
import { write } from '../../support/paged-documents.ts';
import { sampleDocument, sampleOptions } from '../../support/sample-document.ts';

const good = await write(sampleDocument, sampleOptions);

function open(bytes: Uint8Array): PdfFile {
  const file = readPdf(bytes);
  if ('problem' in file) throw new Error(file.problem);
  return file;
}

/** All that the reading functions find in a file. */
function readAll(file: PdfFile): readonly unknown[] {
  const pages = readPages(file);
  return [
    pages.map(({ label, width }) => [label, width]),
    pages.map((page) =>
      readPageText(file, page).painted.map((piece) =>
        piece.kind === 'text' ? piece.text : piece.kind,
      ),
    ),
    readStructure(file).map(({ type, title }) => [type, title]),
    readOutline(file),
    readAttachments(file),
    readMetadata(file),
  ];
}

describe('reading a PDF', () => {
  test('finds an object by its number and follows references', () => {
    const file = open(amendPdf(good, { 500: '(five hundred)', 501: '500 0 R' }));
    expect(textOf(file.resolve({ kind: 'reference', number: 500 }))).toBe(
      'five hundred',
    );
    expect(textOf(file.resolve({ kind: 'reference', number: 501 }))).toBe(
      'five hundred',
    );
    expect(file.resolve({ kind: 'reference', number: 777 })).toBeNull();
    expect(file.numbers).toContain(500);
  });

  test('takes the newer of two objects of one number', () => {
    const once = amendPdf(good, { 500: '1' });
    expect(
      numberOf(
        open(amendPdf(once, { 500: '2' })).resolve({ kind: 'reference', number: 500 }),
      ),
    ).toBe(2);
  });

  test('takes an object that leads to itself for none', () => {
    const file = open(amendPdf(good, { 500: '501 0 R', 501: '500 0 R' }));
    expect(file.resolve({ kind: 'reference', number: 500 })).toBeNull();
  });

  test('says what could not be read, and goes on', () => {
    const file = open(amendPdf(good, { 500: '<< /A [1 2 >>' }));
    expect(file.resolve({ kind: 'reference', number: 500 })).toBeNull();
    expect(file.faults()).toHaveLength(1);
    expect(readPages(file)).toHaveLength(3);
  });

  test('reads a file whose objects are packed into streams, as others write them', () => {
    const folder = mkdtempSync(join(tmpdir(), 'packed-'));
    try {
      writeFileSync(join(folder, 'a.pdf'), good);
      const packed = spawnSync('qpdf', [
        '--object-streams=generate',
        join(folder, 'a.pdf'),
        join(folder, 'b.pdf'),
      ]);
      if (packed.error !== undefined) {
        console.log('qpdf is not installed: packed objects were not tested');
        return;
      }
      const bytes = new Uint8Array(readFileSync(join(folder, 'b.pdf')));
      expect(bytes.length).toBeLessThan(good.length);
      expect(readAll(open(bytes))).toEqual(readAll(open(good)));
    } finally {
      rmSync(folder, { recursive: true, force: true });
    }
  });

  test.each([
    ['nothing', '', 'does not begin'],
    ['a text', 'hello', 'does not begin'],
    ['only a head', '%PDF-1.7\n', 'no startxref'],
    [
      'a table that is not there',
      '%PDF-1.7\nstartxref\n99\n%%EOF',
      'not where it should be',
    ],
    [
      'a table that leads nowhere',
      '%PDF-1.7\nstartxref\n0\n%%EOF',
      'not where it should be',
    ],
    [
      'a table without a trailer',
      '%PDF-1.7\nxref\n0 0\nstartxref\n9\n%%EOF',
      'no trailer',
    ],
    [
      'a table cut off',
      '%PDF-1.7\nxref\n0 3\n0000000000 65535 f \nstartxref\n9\n%%EOF',
      'broken',
    ],
  ])('refuses %s', (_, text, problem) => {
    const read = readPdf(new TextEncoder().encode(text));
    expect(read).toHaveProperty('problem');
    expect((read as { problem: string }).problem).toContain(problem);
  });

  test('never throws and comes to an end, whichever byte is damaged', () => {
    fc.assert(
      fc.property(fc.nat(good.length - 1), fc.nat(255), (place, value) => {
        const bytes = Uint8Array.from(good);
        bytes[place] = value;
        const findings = checkPdf(bytes);
        expect(Array.isArray(findings)).toBe(true);
        const file = readPdf(bytes);
        if (!('problem' in file)) readAll(file);
      }),
      { numRuns: 80 },
    );
  }, 120_000);

  test('never throws where a stretch of the file is lost', () => {
    fc.assert(
      fc.property(
        fc.nat(good.length - 1),
        fc.integer({ min: 1, max: 3000 }),
        (place, length) => {
          const bytes = Uint8Array.from([
            ...good.subarray(0, place),
            ...good.subarray(place + length),
          ]);
          expect(Array.isArray(checkPdf(bytes))).toBe(true);
        },
      ),
      { numRuns: 40 },
    );
  }, 120_000);
});
