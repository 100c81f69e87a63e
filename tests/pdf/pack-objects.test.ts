import { spawnSync } from 'node:child_process';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import {
  checkPdf,
  readAttachments,
  readOutline,
  readPageText,
  readPages,
  readPdf,
} from '../../src/pdf/index.ts';
import { of, page, documentOf, words, write } from '../support/paged-documents.ts';
import type { Tree } from '../support/paged-documents.ts';
import { sampleDocument, sampleOptions } from '../support/sample-document.ts';

/** All that is read of a file, in words and numbers that do not depend on its objects' numbers. */
function contentsOf(bytes: Uint8Array): unknown {
  const file = readPdf(bytes);
  if ('problem' in file) throw new Error(file.problem);
  return {
    pages: readPages(file).map((sheet) =>
      readPageText(file, sheet).painted.map((piece) =>
        piece.kind === 'text' ? [piece.text, piece.x, piece.y] : piece.kind,
      ),
    ),
    outline: readOutline(file),
    attachments: readAttachments(file),
  };
}

describe('a file with packed objects', () => {
  test('holds the same as one without, passes the checks and is smaller', async () => {
    const plain = await write(sampleDocument, sampleOptions);
    const packed = await write(sampleDocument, { ...sampleOptions, isPacked: true });
    expect(checkPdf(packed)).toEqual([]);
    expect(contentsOf(packed)).toEqual(contentsOf(plain));
    expect(packed.length).toBeLessThan(plain.length);
    const text = Buffer.from(packed).toString('latin1');
    expect(text).not.toContain('/StructElem');
    expect(text).not.toContain('trailer');
  });

  test('is the same at every turn', async () => {
    const once = await write(sampleDocument, { ...sampleOptions, isPacked: true });
    const again = await write(sampleDocument, { ...sampleOptions, isPacked: true });
    expect(Buffer.compare(once, again)).toBe(0);
  });

  test('of many objects has several streams of them', async () => {
    const kids: Tree[] = Array.from({ length: 400 }, () => ['P']);
    const marks = kids.map((_, index) =>
      of(index + 1, 72, 20 + index, words(`line ${index}`)),
    );
    const bytes = await write(documentOf(['Document', {}, kids], [page('1', marks)]), {
      isPacked: true,
    });
    expect(checkPdf(bytes)).toEqual([]);
    expect(Buffer.from(bytes).toString('latin1').split('/ObjStm').length - 1).toBe(5);
  });

  test('is read by other programs without a complaint', async () => {
    const folder = mkdtempSync(join(tmpdir(), 'packed-'));
    const path = join(folder, 'packed.pdf');
    writeFileSync(
      path,
      await write(sampleDocument, { ...sampleOptions, isPacked: true }),
    );
    for (const [program, ...options] of [
      ['qpdf', '--check', path],
      ['pdfinfo', path],
      ['mutool', 'show', path, 'trailer'],
    ] as const) {
      const answer = spawnSync(program, options, { encoding: 'utf8' });
      if (answer.error !== undefined)
        console.log(
          `${program} is not installed: packed files were not tested with it`,
        );
      else expect([program, answer.status, answer.stderr]).toEqual([program, 0, '']);
    }
    rmSync(folder, { recursive: true, force: true });
  });

  test('is refused as PDF/A-1', async () => {
    await expect(
      write(sampleDocument, { isPacked: true, conformance: 'PDF/A-1b' }),
    ).rejects.toThrow('PDF/A-1');
  });
});
