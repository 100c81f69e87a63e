import { describe, expect, test } from 'vitest';
import { symbolKey } from '../../src/equation/index.ts';
import { symbol } from './samples.ts';

describe('what tells symbols apart', () => {
  test('letter, bar and subscript do, the meaning does not', () => {
    const keys = [
      symbol('x'),
      symbol('x', '1'),
      { ...symbol('x'), bar: true },
      { ...symbol('x', '1'), bar: true },
      symbol('X'),
    ].map(symbolKey);
    expect(new Set(keys).size).toBe(keys.length);
    expect(symbolKey({ ...symbol('x'), meaning: 'something else' })).toBe(keys[0]);
  });
});
