import { spawnSync } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { checkPdf } from '../../../src/pdf/index.ts';
import { documentOf, of, page, write } from '../../support/paged-documents.ts';
import { jpeg, png, pngWithAlpha } from '../../support/test-pictures.ts';
import type { PngParts } from '../../support/test-pictures.ts';

/** A sheet with one picture, 40 × 40 pt at (100, 100). */
function sheetWith(picture: Uint8Array, conformance?: 'PDF/A-1b'): Promise<Uint8Array> {
  const image = {
    kind: 'image',
    x: 0,
    y: 0,
    width: 40,
    height: 40,
    source: 'images/a',
  } as const;
  const document = documentOf(
    ['Document', {}, [['Figure', { alternate: 'a picture' }]]],
    [page('1', [of(1, 100, 100, [image])])],
  );
  return write(document, {
    images: { 'images/a': picture },
    ...(conformance === undefined ? {} : { conformance }),
  });
}

/** The four pixels of a picture of 2 × 2, red over green and blue over white, in each form that a PNG can have. */
const colours: Readonly<Record<string, PngParts>> = {
  'colour, packed as it is': {
    width: 2,
    height: 2,
    bits: 8,
    colourType: 2,
    lines: [
      [1, 255, 0, 0, 1, 255, 0],
      [2, 1, 0, 255, 255, 0, 255],
    ],
  },
  'colour and opacity': {
    width: 2,
    height: 2,
    bits: 8,
    colourType: 6,
    lines: [
      [0, 255, 0, 0, 255, 0, 255, 0, 255],
      [0, 0, 0, 255, 255, 9, 9, 9, 0],
    ],
  },
  'palette with a clear entry': {
    width: 2,
    height: 2,
    bits: 2,
    colourType: 3,
    lines: [
      [0, 0b00010000],
      [0, 0b10110000],
    ],
    palette: [255, 0, 0, 0, 255, 0, 0, 0, 255, 9, 9, 9],
    clear: [255, 255, 255, 0],
  },
  'one clear colour': {
    width: 2,
    height: 2,
    bits: 8,
    colourType: 2,
    lines: [
      [0, 255, 0, 0, 0, 255, 0],
      [0, 0, 0, 255, 9, 9, 9],
    ],
    clear: [0, 9, 0, 9, 0, 9],
  },
  interlaced: {
    width: 2,
    height: 2,
    bits: 8,
    colourType: 2,
    isInterlaced: true,
    lines: [
      [0, 255, 0, 0],
      [0, 0, 255, 0],
      [0, 0, 0, 255, 255, 255, 255],
    ],
  },
  '16 bits': {
    width: 2,
    height: 2,
    bits: 16,
    colourType: 2,
    lines: [
      [0, 255, 255, 0, 0, 0, 0, 0, 0, 255, 255, 0, 0],
      [0, 0, 0, 0, 0, 255, 255, 255, 255, 255, 255, 255, 255],
    ],
  },
};

describe('embedded pictures', () => {
  test.each(Object.entries(colours))(
    'in the form “%s” show their four pixels',
    async (_, parts) => {
      const bytes = await sheetWith(png(parts));
      expect(checkPdf(bytes)).toEqual([]);
      const shown = pixelsOf(bytes);
      if (shown === undefined) return;
      expect(shown).toEqual(['255 0 0', '0 255 0', '0 0 255', '255 255 255']);
    },
  );

  test('of JPEG pass the checks too', async () => {
    expect(checkPdf(await sheetWith(jpeg))).toEqual([]);
  });

  test('that are partly clear are refused in a file of PDF/A-1', async () => {
    await expect(sheetWith(pngWithAlpha, 'PDF/A-1b')).rejects.toThrow('partly clear');
  });
});

/** The colours in the middles of the four quarters of the picture, drawn by another program; undefined where it is not installed. */
function pixelsOf(bytes: Uint8Array): readonly string[] | undefined {
  const folder = mkdtempSync(join(tmpdir(), 'pictures-'));
  try {
    writeFileSync(join(folder, 'a.pdf'), bytes);
    const drawn = spawnSync('pdftoppm', [
      '-r',
      '72',
      '-x',
      '100',
      '-y',
      '100',
      '-W',
      '40',
      '-H',
      '40',
      join(folder, 'a.pdf'),
      join(folder, 'a'),
    ]);
    if (drawn.error !== undefined) {
      console.log('pdftoppm is not installed: what pictures look like was not tested');
      return undefined;
    }
    const ppm = readFileSync(join(folder, 'a-1.ppm'));
    const start = ppm.length - 40 * 40 * 3;
    return [
      [10, 10],
      [30, 10],
      [10, 30],
      [30, 30],
    ].map(([x, y]) => {
      const at = start + 3 * (y! * 40 + x!);
      return [...ppm.subarray(at, at + 3)].join(' ');
    });
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}
