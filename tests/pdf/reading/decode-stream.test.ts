import { zlibSync } from 'fflate';
import { describe, expect, test } from 'vitest';
import { decodeStream } from '../../../src/pdf/reading/decode-stream.ts';
import { scanObjects } from '../../../src/pdf/reading/scan-objects.ts';
import type { PdfObject, PdfStream } from '../../../src/pdf/reading/pdf-object.ts';
import { entriesOf } from '../../../src/pdf/reading/pdf-object.ts';

const stream = (entries: string, packed: Uint8Array): PdfStream => ({
  kind: 'stream',
  entries: entriesOf(
    scanObjects(new TextEncoder().encode(`<<${entries}>>`)).next() as PdfObject,
  ),
  packed,
});
const decode = (entries: string, packed: Uint8Array): readonly number[] => [
  ...decodeStream(stream(entries, packed), (object) => object),
];
const data = Uint8Array.from([1, 2, 3, 4]);

describe('the content of a stream', () => {
  test('without a filter is as it is', () => {
    expect(decode('', data)).toEqual([1, 2, 3, 4]);
  });

  test('is inflated, once or twice', () => {
    expect(decode('/Filter /FlateDecode', zlibSync(data))).toEqual([1, 2, 3, 4]);
    expect(
      decode('/Filter [/FlateDecode /FlateDecode]', zlibSync(zlibSync(data))),
    ).toEqual([1, 2, 3, 4]);
  });

  test('has its lines put together', () => {
    const lines = zlibSync(Uint8Array.from([2, 1, 2, 2, 1, 1]));
    expect(
      decode('/Filter /FlateDecode /DecodeParms <</Predictor 15 /Columns 2>>', lines),
    ).toEqual([1, 2, 2, 3]);
  });

  test('of a JPEG stays packed', () => {
    expect(decode('/Filter /DCTDecode', data)).toEqual([1, 2, 3, 4]);
  });

  test.each([
    ['an unknown filter', '/Filter /LZWDecode'],
    ['damaged data', '/Filter /FlateDecode'],
  ])('with %s is refused', (_, entries) => {
    expect(() => decode(entries, data)).toThrow(RangeError);
  });

  test('with an unknown predictor, or lines cut short, is refused', () => {
    expect(() =>
      decode('/Filter /FlateDecode /DecodeParms <</Predictor 2>>', zlibSync(data)),
    ).toThrow('predictor 2');
    expect(() =>
      decode(
        '/Filter /FlateDecode /DecodeParms <</Predictor 12 /Columns 2>>',
        zlibSync(data),
      ),
    ).toThrow('lines');
  });
});
