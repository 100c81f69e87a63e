import { expect, test } from 'vitest';
import { drawRevisionMark } from '../../src/layout/revision-mark.ts';
import { openWords } from '../../src/layout/words.ts';
import { layoutTools } from '../support/layout-tools.ts';
import { ownFonts } from '../support/own-fonts.ts';

const words = openWords(ownFonts, () => undefined);
const widthOf = (mark: string): number =>
  drawRevisionMark(mark, { theme: layoutTools.theme, words, height: 14 }).width;

test('a letter stands in a triangle of equal sides; a longer mark makes it wider, to a limit', () => {
  // Height 14 of an equilateral triangle: side 14 · 2/√3 = 16.17.
  expect(widthOf('B')).toBeCloseTo(16.17, 1);
  expect(widthOf('P12')).toBeGreaterThan(widthOf('B'));
  expect(widthOf('REVISION-2031')).toBe(widthOf('REVISION-2031-14'));
});
