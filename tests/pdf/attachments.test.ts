import { createHash } from 'node:crypto';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { checkPdf, readAttachments, readPdf } from '../../src/pdf/index.ts';
import type { Attachment } from '../../src/pdf/index.ts';
import { documentWith, words, write } from '../support/paged-documents.ts';

const document = documentWith(...words('text'));
const attachment = (name: string, bytes: Uint8Array): Attachment => ({
  name,
  bytes,
  mime: 'application/octet-stream',
  description: `the file ${name}`,
  relationship: 'Source',
});

describe('attachments', () => {
  test('come out as they went in, with their size and check sum', async () => {
    await fc.assert(
      fc.asyncProperty(
        fc.array(fc.uint8Array({ maxLength: 3000 }), { maxLength: 5 }),
        async (all) => {
          const attachments = all.map((bytes, index) =>
            attachment(`f${index}.bin`, bytes),
          );
          const written = await write(document, { attachments });
          expect(checkPdf(written)).toEqual([]);
          const file = readPdf(written);
          if ('problem' in file) throw new Error(file.problem);
          const read = readAttachments(file);
          expect(read.map(({ bytes }) => [...bytes])).toEqual(
            all.map((bytes) => [...bytes]),
          );
          expect(
            read.map(({ checkSum }) => Buffer.from(checkSum!).toString('hex')),
          ).toEqual(all.map((bytes) => createHash('md5').update(bytes).digest('hex')));
          expect(read.map(({ size }) => size)).toEqual(all.map(({ length }) => length));
        },
      ),
      { numRuns: 15 },
    );
  });

  test('keep their names, folders and letters of any alphabet', async () => {
    const names = ['a.yaml', 'beams/Träger ½.yaml', '梁.yaml', 'a (1)\\.yaml'];
    const attachments = names.map((name) => attachment(name, new Uint8Array([1])));
    const bytes = await write(document, { attachments });
    expect(checkPdf(bytes)).toEqual([]);
    const file = readPdf(bytes);
    if ('problem' in file) throw new Error(file.problem);
    const read = readAttachments(file).map(({ name }) => name);
    expect([...read].sort()).toEqual([...names].sort());
  });

  test('are refused where two have one name', async () => {
    const bytes = new Uint8Array([1]);
    const twice = [attachment('a', bytes), attachment('a', bytes)];
    await expect(write(document, { attachments: twice })).rejects.toThrow('one name');
  });

  test('are refused in a file of PDF/A-1', async () => {
    const attachments = [attachment('a', new Uint8Array([1]))];
    await expect(
      write(document, { attachments, conformance: 'PDF/A-1b' }),
    ).rejects.toThrow('PDF/A-1');
  });
});
