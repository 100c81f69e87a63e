import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { textWidth } from '../../src/plain/text-width.ts';
import { widestWord, wrapText } from '../../src/plain/wrap-text.ts';

describe('wrapping', () => {
  test('breaks at blanks, as late as it can', () => {
    expect(wrapText('moments about A leave one unknown', 16)).toEqual([
      'moments about A',
      'leave one',
      'unknown',
    ]);
  });

  test('keeps a number and its unit together where a no-break space joins them', () => {
    expect(wrapText('a span of 21\u00a0ft', 12)).toEqual(['a span of', '21\u00a0ft']);
  });

  test('keeps the line breaks that the text has', () => {
    expect(wrapText('one\n\ntwo', 10)).toEqual(['one', '', 'two']);
  });

  test('cuts a word that is wider than a line', () => {
    expect(wrapText('ab abcdefgh', 3)).toEqual(['ab', 'abc', 'def', 'gh']);
  });

  test('gives one empty line for no text', () => {
    expect(wrapText('', 10)).toEqual(['']);
  });

  test('never passes the width and loses no character but blanks, whatever the text', () => {
    fc.assert(
      fc.property(
        fc.string({ unit: 'grapheme' }),
        fc.integer({ min: 2, max: 40 }),
        (text, width) => {
          const lines = wrapText(text, width);
          expect(lines.every((line) => textWidth(line) <= width)).toBe(true);
          const solid = (one: string): string => one.replace(/[ \t\n]/gu, '');
          expect(solid(lines.join(''))).toBe(solid(text));
        },
      ),
    );
  });
});

test('the widest word decides how narrow a column can become', () => {
  expect(widestWord('from A to midspan')).toBe(7);
});
