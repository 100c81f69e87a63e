import { describe, expect, test } from 'vitest';
import { exponentText } from '../../src/equation/exponent-text.ts';

describe('exponents', () => {
  test.each([
    [2, '2'],
    [0.5, '1/2'],
    [1.5, '3/2'],
    [1 / 3, '1/3'],
    [-1, '-1'],
    [0.37, '0.37'],
  ])('%d prints as %s', (exponent, text) => {
    expect(exponentText(exponent)).toBe(text);
  });
});
