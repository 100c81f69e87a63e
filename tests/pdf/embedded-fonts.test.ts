import { describe, expect, test } from 'vitest';
import type { GlyphsMark } from '../../src/drawing/index.ts';
import { readPageText, readPages, readPdf } from '../../src/pdf/index.ts';
import { ownFonts } from '../support/own-fonts.ts';
import { documentWith, words, write } from '../support/paged-documents.ts';

/** What is read from a page with some marks. */
async function read(...marks: readonly GlyphsMark[]): Promise<readonly string[]> {
  const file = readPdf(await write(documentWith(...marks)));
  if ('problem' in file) throw new Error(file.problem);
  const { painted } = readPageText(file, readPages(file)[0]!);
  return painted.flatMap((piece) => (piece.kind === 'text' ? [piece.text] : []));
}

const run = (...glyphs: GlyphsMark['glyphs']): GlyphsMark => ({
  kind: 'glyphs',
  x: 0,
  y: 0,
  face: 'text',
  size: 10,
  colour: [0, 0, 0],
  glyphs,
});

describe('embedded faces', () => {
  test('keep apart the texts that one glyph stands for', async () => {
    const texts = ['well-known', 'non\u2011breaking', 'a b', 'a\u00A0b', 'a-b c'];
    const face = ownFonts.face('text');
    const glyphs = texts.map((text) =>
      Array.from(text, (letter, index) => {
        const { id } = face.glyphFor(letter.codePointAt(0)!)!;
        return { id, x: 5 * index, text: letter };
      }),
    );
    expect(glyphs[1]![3]!.id).toBe(glyphs[0]![4]!.id); // one glyph for both hyphens
    expect(await read(...glyphs.map((one) => run(...one)))).toEqual(texts);
  });

  test('read a ligature as its letters', async () => {
    const fi = ownFonts.face('text').shape('fi');
    expect(await read(...words('fixed efficient'))).toEqual(['fixed efficient']);
    expect(fi.map(({ text }) => text).join('')).toBe('fi');
  });

  test('read letters beyond the first plane', async () => {
    expect(await read(run({ id: 30, x: 0, text: '𝜎' }))).toEqual(['𝜎']);
  });

  test('refuse the empty box, a glyph that the face has not, and a glyph without a text', async () => {
    await expect(read(run({ id: 0, x: 0, text: '?' }))).rejects.toThrow('no glyph 0');
    await expect(read(run({ id: 60_000, x: 0, text: '?' }))).rejects.toThrow(
      'no glyph 60000',
    );
    await expect(read(run({ id: 5, x: 0, text: '' }))).rejects.toThrow(
      'stands for no text',
    );
  });
});
