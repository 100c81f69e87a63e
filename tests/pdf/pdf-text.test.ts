import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  cleanText,
  pdfText,
  printName,
  printText,
  textBytes,
} from '../../src/pdf/pdf-text.ts';
import { scanObjects } from '../../src/pdf/reading/scan-objects.ts';
import { textOf } from '../../src/pdf/reading/pdf-object.ts';
import type { PdfObject } from '../../src/pdf/reading/pdf-object.ts';

const ascii = (text: string): Uint8Array => new TextEncoder().encode(text);

describe('a text string', () => {
  test('of ASCII stands as it is, all else in UTF-16 behind its mark', () => {
    expect([...textBytes('B1')]).toEqual([0x42, 0x31]);
    expect([...textBytes('½')]).toEqual([0xfe, 0xff, 0x00, 0xbd]);
    expect([...textBytes('𝜎')]).toEqual([0xfe, 0xff, 0xd8, 0x35, 0xdf, 0x0e]);
  });

  test('in a content stream is read back as it was, whatever it holds', () => {
    fc.assert(
      fc.property(fc.string({ unit: 'binary' }), (text) => {
        const read = scanObjects(ascii(printText(text))).next() as PdfObject;
        expect(textOf(read)).toBe(cleanText(text));
      }),
    );
  });

  test('loses only what neither XML nor UTF-16 can hold', () => {
    expect(cleanText('a\u0000b\u001Fc\uD800d\uFFFF')).toBe(
      'a\uFFFDb\uFFFDc\uFFFDd\uFFFD',
    );
    expect(cleanText('tab\tand\nline – ½ 𝜎')).toBe('tab\tand\nline – ½ 𝜎');
  });

  test('is an object for PDFKit, so that it is no name', () => {
    expect(typeof pdfText('B1')).toBe('object');
    expect(pdfText('B1').valueOf()).toBe('B1');
  });
});

describe('a name', () => {
  test('has its odd letters in hexadecimal', () => {
    expect(printName('application/yaml')).toBe('application#2Fyaml');
    expect(printName('image/svg+xml')).toBe('image#2Fsvg+xml');
    expect(printName('a b#c')).toBe('a#20b#23c');
  });
});
