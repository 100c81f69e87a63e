import { describe, expect, test } from 'vitest';
import {
  padAfter,
  padAround,
  padBefore,
  textWidth,
} from '../../src/plain/text-width.ts';

describe('the width of a text on a terminal', () => {
  test('counts one column a character', () => {
    expect(textWidth('R_C = 9.5 kip·ft²')).toBe(17);
  });

  test('counts nothing for a bar over a letter', () => {
    expect(textWidth('x\u0304_1')).toBe(3);
  });

  test('counts two columns for characters of East Asian width', () => {
    expect(textWidth('梁 B1')).toBe(5);
  });
});

describe('padding', () => {
  test('fills up to a width by columns, not by characters', () => {
    expect(padAfter('x\u0304', 3)).toBe('x\u0304  ');
    expect(padBefore('梁', 4)).toBe('  梁');
    expect(padAround('ab', 5)).toBe(' ab  ');
  });

  test('leaves alone what is wider already', () => {
    expect([padAfter('abc', 2), padBefore('abc', 2), padAround('abc', 2)]).toEqual([
      'abc',
      'abc',
      'abc',
    ]);
  });
});
