import { unzlibSync, zlibSync } from 'fflate';
import { describe, expect, test } from 'vitest';
import { identifyFile } from '../../src/pdf/file-identity.ts';
import { openPdf } from '../../src/pdf/open-pdf.ts';
import { isKind, nameOf, textOf } from '../../src/pdf/reading/pdf-object.ts';
import { readPdf } from '../../src/pdf/reading/read-pdf.ts';
import type { PdfFile } from '../../src/pdf/reading/read-pdf.ts';
import { write } from '../support/paged-documents.ts';
import { sampleDocument, sampleOptions } from '../support/sample-document.ts';

const ending = { info: { Title: 'a (title)' }, id: identifyFile('a').id };

function read(bytes: Uint8Array): PdfFile {
  const file = readPdf(bytes);
  if ('problem' in file) throw new Error(file.problem);
  return file;
}

describe('a file under construction', () => {
  test.each([false, true])(
    'holds what was added to it (packed: %s)',
    async (isPacked) => {
      const pdf = await openPdf({ conformance: 'PDF/A-3a', isPacked });
      const later = pdf.reserve();
      pdf.catalog.Stream = pdf.addStream(
        { Mine: true },
        new TextEncoder().encode('content'),
      );
      pdf.catalog.Later = later;
      pdf.catalog.Object = pdf.add({ Name: 'here' });
      later.data = { Name: 'later' };
      later.end();
      const file = read(pdf.finish(ending));
      expect(
        new TextDecoder().decode(file.decode(file.entry(file.catalog, 'Stream'))),
      ).toBe('content');
      expect(nameOf(file.entry(file.entry(file.catalog, 'Object'), 'Name'))).toBe(
        'here',
      );
      expect(nameOf(file.entry(file.entry(file.catalog, 'Later'), 'Name'))).toBe(
        'later',
      );
      expect(textOf(file.entry(file.entry(file.trailer, 'Info'), 'Title'))).toBe(
        'a (title)',
      );
      expect(file.faults()).toEqual([]);
    },
  );

  test('is refused in the end where a reserved object was never written', async () => {
    const pdf = await openPdf({ conformance: 'PDF/A-3a' });
    pdf.catalog.Lost = pdf.reserve({});
    expect(() => pdf.finish(ending)).toThrow(
      '1 objects of the file were never written',
    );
  });

  test('deflates every stream by itself and not by the machine, fonts and colour profile too', async () => {
    const file = read(await write(sampleDocument, sampleOptions));
    const deflated = file.numbers
      .map((number) => file.resolve({ kind: 'reference', number }))
      .flatMap((object) => (isKind(object, 'stream') ? [object] : []))
      .filter(({ entries }) => nameOf(entries.get('Filter') ?? null) === 'FlateDecode');
    expect(deflated.length).toBeGreaterThan(10);
    for (const { packed } of deflated)
      expect(Buffer.compare(zlibSync(unzlibSync(packed)), packed)).toBe(0);
  });
});
