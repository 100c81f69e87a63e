import { describe, expect, test } from 'vitest';
import { matchKeys } from '../../../src/report/revision/match-keys.ts';

const matched = (earlier: string, later: string): string =>
  matchKeys(Array.from(earlier), Array.from(later))
    .map(([one, other]) => {
      expect(earlier[one]).toBe(later[other]);
      return earlier[one];
    })
    .join('');

describe('what two lists have in common', () => {
  test('is the longest run of both in their order', () => {
    // The textbook's pair: BCBA, BDAB and BCAB are the longest, of four letters each
    // (Cormen, Leiserson, Rivest, Stein, Introduction to Algorithms, 15.4).
    expect(matched('ABCBDAB', 'BDCABA')).toHaveLength(4);
    expect(matched('abc', 'abc')).toBe('abc');
    expect(matched('abc', 'xyz')).toBe('');
    expect(matched('', 'abc')).toBe('');
  });

  test('counts a repeated thing once for each time', () => {
    expect(matched('aa', 'aaa')).toBe('aa');
    expect(matched('xaxbx', 'xx')).toBe('xx');
  });

  test('is found in lists too long to be searched where only their middle differs', () => {
    const long = Array.from({ length: 20_000 }, (_, index) => String(index));
    const other = long.with(10_000, 'new');
    expect(matchKeys(long, other)).toHaveLength(19_999);
  });
});
