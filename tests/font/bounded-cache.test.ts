import { describe, expect, test } from 'vitest';
import { boundedCache } from '../../src/font/index.ts';

describe('a bounded cache', () => {
  test('makes an answer once', () => {
    const cache = boundedCache<number>(2);
    let made = 0;
    const make = (): number => ++made;
    expect([cache.get('a', make), cache.get('a', make)]).toEqual([1, 1]);
  });

  test('forgets the oldest answer first and never holds more than it may', () => {
    const cache = boundedCache<string>(2);
    for (const key of ['a', 'b', 'c']) cache.get(key, () => key);
    expect(cache.size()).toBe(2);
    expect(cache.get('c', () => 'made again')).toBe('c');
    expect(cache.get('a', () => 'made again')).toBe('made again');
  });

  test('remembers an answer that is undefined', () => {
    const cache = boundedCache<undefined>(2);
    let made = 0;
    const make = (): undefined => {
      made += 1;
    };
    cache.get('a', make);
    cache.get('a', make);
    expect(made).toBe(1);
  });

  test('refuses to hold nothing', () => {
    expect(() => boundedCache(0)).toThrow(RangeError);
  });
});
