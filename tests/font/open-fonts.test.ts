import { describe, expect, test } from 'vitest';
import { faceNames, openFonts } from '../../src/font/index.ts';
import { ownFontFile, ownFonts } from '../support/own-fonts.ts';

describe('the font book', () => {
  test.each(faceNames)('%s opens and measures its letters in ems', (name) => {
    const face = ownFonts.face(name);
    const codePoint = name.includes('Size') ? 0x28 : 0x41; // ( in the size faces, else A
    const glyph = face.glyphFor(codePoint);
    expect(face.name).toBe(name);
    expect(glyph?.advance).toBeGreaterThan(0.3);
    expect(glyph?.advance).toBeLessThan(1.3);
    expect(face.ascent).toBeGreaterThan(0.5);
    expect(face.descent).toBeGreaterThan(0.1);
    expect(face.bytes.length).toBeGreaterThan(1000);
  });

  test('knows five text faces and the twenty equation faces', () => {
    expect(faceNames.filter((name) => name.startsWith('text'))).toHaveLength(5);
    expect(faceNames.filter((name) => name.startsWith('KaTeX_'))).toHaveLength(20);
  });

  test('opens a face only when it is first asked for, and only once', () => {
    const read: string[] = [];
    const book = openFonts((name) => {
      read.push(name);
      return ownFontFile(name);
    });
    expect(read).toEqual([]);
    expect(book.face('text')).toBe(book.face('text'));
    book.face('KaTeX_Main-Regular');
    expect(read).toEqual(['fonts/SourceSerif4-Regular.ttf', 'KaTeX_Main-Regular.ttf']);
  });

  test('refuses a face that it does not know, by name', () => {
    expect(() => ownFonts.face('text-black')).toThrow(/text-black/);
  });

  test('states the heights of letters, measured where the file states none', () => {
    expect(ownFonts.face('text').capHeight).toBeCloseTo(0.67, 3);
    expect(ownFonts.face('text').xHeight).toBeCloseTo(0.475, 3);
    expect(ownFonts.face('KaTeX_Main-Regular').capHeight).toBeCloseTo(0.683, 2);
    expect(ownFonts.face('KaTeX_Main-Regular').xHeight).toBeCloseTo(0.442, 3);
    expect(ownFonts.face('KaTeX_Size1-Regular').capHeight).toBe(0); // it has no letters
    expect(ownFonts.face('KaTeX_Typewriter-Regular').capHeight).toBeGreaterThan(0.5);
  });
});
