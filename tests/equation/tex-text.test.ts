import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { texText } from '../../src/equation/tex-text.ts';
import { layOut } from './katex.ts';

const leaves = (html: string): string =>
  (/class="katex-html".*$/s.exec(html)?.[0] ?? '')
    .replace(/<[^>]*>/g, '')
    .replace(/^[^>]*>/, '');

describe('a user’s own text as TeX', () => {
  test('special characters are escaped', () => {
    expect(texText('50% of {A_1}')).toBe('\\text{50\\% of \\{A\\_1\\}}');
    expect(texText('a\\b^~')).toBe(
      '\\text{a\\textbackslash{}b\\textasciicircum{}\\textasciitilde{}}',
    );
  });

  test('letters without a glyph become question marks', () => {
    expect(texText('ł漢ж')).toBe('\\text{???}');
  });

  test('Greek letters and signs are set as mathematics', () => {
    expect(texText('2×θ')).toBe('\\text{2$\\times$$\\theta$}');
  });

  test('any text parses without a warning', async () => {
    await fc.assert(
      fc.asyncProperty(fc.string({ unit: 'grapheme', maxLength: 12 }), async (text) => {
        const { warnings } = await layOut(texText(text));
        expect(warnings).toEqual([]);
      }),
      { numRuns: 300 },
    );
  });

  test('doubled signs do not run together', async () => {
    const { html } = await layOut(texText("a--b''c"));
    expect(leaves(html)).not.toMatch(/[–—“”]/);
  });
});
