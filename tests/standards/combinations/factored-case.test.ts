import { describe, expect, test } from 'vitest';
import {
  sameTerms,
  tidyFactor,
  writeMark,
} from '../../../src/standards/combinations/factored-case.ts';

const terms = (of: Record<string, number>) =>
  Object.entries(of).map(([mark, factor]) => ({ case: mark, factor }));

describe('writeMark', () => {
  test('leaves factor 1 out and keeps the order', () => {
    expect(writeMark(terms({ D: 1.2, W: 1, L: 1, Lr: 0.5 }))).toBe(
      '1.2D + W + L + 0.5Lr',
    );
  });
});

describe('tidyFactor', () => {
  test('drops the noise of a product', () => {
    expect(0.75 * 0.7).not.toBe(0.525);
    expect(tidyFactor(0.75 * 0.7)).toBe(0.525);
  });
});

describe('sameTerms', () => {
  test('looks past order and past terms of factor 0', () => {
    expect(sameTerms(terms({ D: 1, L: 0.7 }), terms({ L: 0.7, S: 0, D: 1 }))).toBe(
      true,
    );
  });

  test('tells unlike factors and unlike cases apart', () => {
    expect(sameTerms(terms({ D: 1, L: 0.7 }), terms({ D: 1, L: 0.75 }))).toBe(false);
    expect(sameTerms(terms({ D: 1 }), terms({ D: 1, L: 1 }))).toBe(false);
    expect(sameTerms(terms({ D: 1, L: 1 }), terms({ D: 1, S: 1 }))).toBe(false);
  });
});
