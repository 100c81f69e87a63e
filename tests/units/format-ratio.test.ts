import { describe, expect, test } from 'vitest';
import { formatRatio } from '../../src/units/index.ts';

describe('ratios', () => {
  test.each([
    [0.62, '0.62'],
    [0.998, '1.00'],
    [1, '1.00'],
    [1.004, '1.004'],
    [1.0000012, '1.000001'],
    [1.0000000001, '>1.00'],
    [1.27, '1.27'],
    [0, '0'],
  ])('%d prints as %s', (ratio, text) => {
    expect(formatRatio(ratio)).toBe(text);
  });
});
