import { describe, expect, test } from 'vitest';
import { dropNoise } from '../../src/statics/tolerances.ts';

describe('dropNoise', () => {
  test('makes a value exactly 0 only beside sizes that leave no figure of it', () => {
    expect(dropNoise(1e-13, 1)).toBe(0);
    expect(dropNoise(-1e-13, 1)).toBe(0);
    expect(dropNoise(1e-11, 1)).toBe(1e-11);
    expect(dropNoise(1e-13, 1e-3)).toBe(1e-13);
    expect(dropNoise(0, 0)).toBe(0);
  });
});
