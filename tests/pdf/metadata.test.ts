import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { identifyFile } from '../../src/pdf/file-identity.ts';
import { informationOf, pdfDate, xmpOf } from '../../src/pdf/metadata.ts';
import type { Metadata } from '../../src/pdf/metadata.ts';
import { readXml } from '../../src/pdf/reading/read-xml.ts';

const plain: Metadata = {
  title: 'Depot',
  language: 'en',
  producer: 'sumzero 0.0',
  identity: identifyFile('x'),
  conformance: 'PDF/A-3a',
};
const packet = (metadata: Metadata): string =>
  new TextDecoder().decode(xmpOf(metadata));

describe('the XMP packet', () => {
  test('begins and ends as a packet must, without attributes that PDF/A refuses', () => {
    const text = packet(plain);
    expect(
      text.startsWith('<?xpacket begin="\uFEFF" id="W5M0MpCehiHzreSzNTczkc9d"?>'),
    ).toBe(true);
    expect(text.endsWith('<?xpacket end="w"?>')).toBe(true);
    expect(text).not.toMatch(/<\?xpacket[^>]*(?:bytes|encoding)=/u);
  });

  test('says the same as the information dictionary whatever the title is', () => {
    fc.assert(
      fc.property(fc.string({ unit: 'binary', minLength: 1 }), (title) => {
        const text = packet({ ...plain, title });
        expect(readXml(text)).not.toHaveProperty('problem');
        const [, written = ''] =
          /<dc:title><rdf:Alt><rdf:li xml:lang="x-default">([^<]*)</u.exec(text) ?? [];
        const read = written
          .replaceAll('&lt;', '<')
          .replaceAll('&gt;', '>')
          .replaceAll('&#xD;', '\r')
          .replaceAll('&amp;', '&');
        expect(read).toBe(informationOf({ ...plain, title }).Title);
      }),
    );
  });

  test('names the standards that the file keeps', () => {
    expect(packet(plain)).toContain(
      '<pdfaid:part>3</pdfaid:part>\n<pdfaid:conformance>A<',
    );
    expect(packet({ ...plain, conformance: 'PDF/A-1b' })).toContain(
      '<pdfaid:part>1</pdfaid:part>\n<pdfaid:conformance>B<',
    );
  });

  test('leaves out what is not known', () => {
    expect(packet(plain)).not.toMatch(/dc:creator|dc:description|Date>/u);
    expect(Object.keys(informationOf(plain))).toEqual(['Title', 'Creator', 'Producer']);
  });
});

describe('a day', () => {
  test('is written at midnight, Greenwich', () => {
    expect(pdfDate('2026-03-14')).toBe('D:20260314000000Z');
  });

  test.each(['', '2026-3-14', '14.03.2026', '2026-03-14T10:00'])(
    '%s is refused',
    (text) => {
      expect(() => pdfDate(text)).toThrow(RangeError);
    },
  );
});
