import { describe, expect, test } from 'vitest';
import { symbolToTex } from '../../src/equation/index.ts';
import { symbol } from './samples.ts';

describe('symbols as TeX', () => {
  test.each([
    ['R', 'C', 'R_{\\mathrm{C}}'],
    ['R', 'Ax', 'R_{\\mathrm{A}x}'],
    ['F', 'x', 'F_{x}'],
    ['R', 'A.5', 'R_{\\text{A.5}}'],
    ['M', 'max', 'M_{\\mathrm{max}}'],
    ['θ', 'A', '\\theta_{\\mathrm{A}}'],
    ['ℓ', undefined, '\\ell'],
    ['EI', undefined, '\\mathrm{EI}'],
    ['w', '', 'w'],
    ['P', 'θ', 'P_{\\theta}'],
  ])('%s with %s', (letter, subscript, tex) => {
    expect(symbolToTex(symbol(letter, subscript))).toBe(tex);
  });

  test('a bar stands over the letter alone', () => {
    expect(symbolToTex({ ...symbol('x', '2'), bar: true })).toBe(
      '\\bar{x}_{\\mathrm{2}}',
    );
  });

  test('an upright letter is upright', () => {
    expect(symbolToTex({ ...symbol('D'), upright: true })).toBe('\\mathrm{D}');
  });
});
