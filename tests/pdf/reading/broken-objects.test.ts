import { zlibSync } from 'fflate';
import { expect, test } from 'vitest';
import { brokenObjects } from '../../../src/pdf/reading/broken-objects.ts';
import { readPdf } from '../../../src/pdf/reading/read-pdf.ts';

/** The smallest PDF with one deflated stream. */
function pdfOf(packed: Uint8Array): Uint8Array {
  const latin = (text: string): number[] => [...Buffer.from(text, 'latin1')];
  const bytes: number[] = latin('%PDF-1.7\n');
  const places: number[] = [];
  const add = (...parts: readonly (readonly number[])[]): void => {
    places.push(bytes.length);
    for (const part of parts) bytes.push(...part);
  };
  add(latin('1 0 obj\n<</Type /Catalog>>\nendobj\n'));
  add(
    latin(`2 0 obj\n<</Length ${packed.length} /Filter /FlateDecode>>\nstream\n`),
    [...packed],
    latin('\nendstream\nendobj\n'),
  );
  const table = bytes.length;
  const lines = places.map((at) => `${String(at).padStart(10, '0')} 00000 n \n`);
  bytes.push(
    ...latin(
      `xref\n0 3\n0000000000 65535 f \n${lines.join('')}trailer\n<</Size 3 /Root 1 0 R>>\nstartxref\n${table}\n%%EOF\n`,
    ),
  );
  return Uint8Array.from(bytes);
}

function brokenIn(packed: Uint8Array): readonly string[] {
  const file = readPdf(pdfOf(packed));
  if ('problem' in file) throw new Error(file.problem);
  return brokenObjects(file);
}

const words = new TextEncoder().encode('BT (moments about A) Tj ET');

test('nothing is told of a sound file', () => {
  expect(brokenIn(zlibSync(words))).toEqual([]);
});

test('data that unpack to something else than was packed are told by their object', () => {
  // Stored, so that a changed byte unpacks as easily as the right one.
  const packed = zlibSync(words, { level: 0 });
  packed[20] = packed[20]! ^ 1;
  expect(brokenIn(packed)).toEqual([
    'the data of object 2 are not those that were packed',
  ]);
});

test('data that do not unpack are told', () => {
  const packed = zlibSync(words);
  packed[2] = 0xff;
  expect(brokenIn(packed)).toEqual(['the deflated data of a stream are damaged']);
});

test('a line break that a program counts among the data does no harm', () => {
  expect(brokenIn(Uint8Array.from([...zlibSync(words), 13, 10]))).toEqual([]);
});
