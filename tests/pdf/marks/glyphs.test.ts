import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { GlyphsMark } from '../../../src/drawing/index.ts';
import { scanObjects } from '../../../src/pdf/reading/scan-objects.ts';
import { bytesOf, itemsOf, numberOf } from '../../../src/pdf/reading/pdf-object.ts';
import type { PdfObject } from '../../../src/pdf/reading/pdf-object.ts';
import { ownFonts } from '../../support/own-fonts.ts';
import { drawn } from '../../support/page-content.ts';

const face = ownFonts.face('text');
const glyph = (letter: string, x: number): GlyphsMark['glyphs'][number] => ({
  id: face.glyphFor(letter.codePointAt(0)!)!.id,
  x,
  text: letter,
});
const run = (glyphs: GlyphsMark['glyphs'], size: number = 10): GlyphsMark => ({
  kind: 'glyphs',
  x: 5,
  y: 20,
  face: 'text',
  size,
  colour: [0, 0, 0],
  glyphs,
});
const advance = (letter: string): number =>
  face.glyphFor(letter.codePointAt(0)!)!.advance;

describe('a run of glyphs', () => {
  test('is one text object on its baseline, measured from the foot of the page', async () => {
    const glyphs = [glyph('A', 0), glyph('B', 10 * advance('A'))];
    expect(await drawn([run(glyphs)])).toEqual([
      '/P <</MCID 0>> BDC',
      '/F1 10 Tf',
      'BT 105 572 Td <00010002> Tj ET',
      'EMC',
    ]);
  });

  test('that begins beside its origin begins there', async () => {
    const lines = await drawn([run([glyph('A', 3)])]);
    expect(lines).toContain('BT 108 572 Td <0001> Tj ET');
  });

  test('says where a glyph stands elsewhere than after the last, in thousandths of an em', async () => {
    const glyphs = [glyph('A', 0), glyph('B', 10 * advance('A') + 1.5)];
    expect(await drawn([run(glyphs)])).toContain(
      'BT 105 572 Td [<0001>-150<0002>] TJ ET',
    );
  });

  test('without glyphs draws nothing', async () => {
    expect(await drawn([run([])])).toEqual(['']);
  });

  test('of no size is refused', async () => {
    await expect(drawn([run([glyph('A', 0)], 0)])).rejects.toThrow('size');
  });

  test('stands within a two-thousandth of an em of every place asked for, however long it is', async () => {
    const gaps = fc.array(fc.double({ min: -0.9, max: 2, noNaN: true }), {
      minLength: 1,
      maxLength: 60,
    });
    await fc.assert(
      fc.asyncProperty(gaps, fc.constantFrom(7.3, 10, 19), async (all, size) => {
        let x = 0;
        const glyphs = all.map((gap) => {
          x += gap * size;
          return glyph('n', x);
        });
        const lines = await drawn([run(glyphs, size)]);
        const places = placesShown(
          lines.find((line) => line.startsWith('BT'))!,
          size,
        );
        const first = glyphs[0]!.x;
        for (const [index, { x: asked }] of glyphs.entries())
          expect(Math.abs(places[index]! - (asked - first))).toBeLessThanOrEqual(
            0.0005 * size + 1e-9,
          );
      }),
      { numRuns: 25 },
    );
  });
});

/** Where a reader draws the glyphs of a text object, from its start. */
function placesShown(line: string, size: number): readonly number[] {
  const scanner = scanObjects(
    new TextEncoder().encode(line.replace(/^BT \S+ \S+ Td /u, '')),
  );
  const shown = scanner.next() as PdfObject;
  const items = itemsOf(shown).length > 0 ? itemsOf(shown) : [shown];
  const places: number[] = [];
  let at = 0;
  for (const item of items) {
    at -= ((numberOf(item) ?? 0) * size) / 1000;
    const length = bytesOf(item)?.length ?? 0;
    for (let code = 0; code < length / 2; code += 1) {
      places.push(at);
      at += advance('n') * size;
    }
  }
  return places;
}
