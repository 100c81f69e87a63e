import { describe, expect, test } from 'vitest';
import {
  name,
  symbolKey,
  toLinear,
  toSpeech,
  toTex,
} from '../../src/equation/index.ts';
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

describe('a derivative', () => {
  const curvature = { ...symbol('v'), primes: 2 } as const;

  test('is told from what it is derived of, and shows its primes to every reader', () => {
    expect(symbolKey(curvature)).not.toBe(symbolKey(symbol('v')));
    const of = name(curvature);
    expect([toTex(of), toLinear(of), toSpeech(of)]).toEqual([
      "v''",
      'v″',
      'v double prime',
    ]);
  });
});
