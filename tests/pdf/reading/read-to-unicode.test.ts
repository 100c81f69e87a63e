import { describe, expect, test } from 'vitest';
import { readToUnicode } from '../../../src/pdf/reading/read-to-unicode.ts';

const read = (text: string): Readonly<Record<number, string>> =>
  Object.fromEntries(readToUnicode(new TextEncoder().encode(text)));

describe('a ToUnicode map', () => {
  test('gives codes one by one, in ranges that count on, and in lists', () => {
    expect(
      read(`1 begincodespacerange <0000><ffff> endcodespacerange
        2 beginbfchar <0001> <0041> <0002> <00660069> endbfchar
        2 beginbfrange <0010> <0012> <0061> <0020> <0021> [<D835DF0E> <00 42>] endbfrange`),
    ).toEqual({ 1: 'A', 2: 'fi', 16: 'a', 17: 'b', 18: 'c', 32: '𝜎', 33: 'B' });
  });

  test('that is empty gives nothing', () => {
    expect(read('')).toEqual({});
  });
});
