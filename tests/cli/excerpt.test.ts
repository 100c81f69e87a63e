import { describe, expect, test } from 'vitest';
import { excerptAt } from '../../src/cli/excerpt.ts';

const at = (lineText: string, column: number, length: number): readonly string[] => {
  const { line, underline } = excerptAt({ line: 1, column, lineText }, length);
  return [line, underline];
};

describe('the line of a mistake', () => {
  test('is underlined where the mistake stands', () => {
    expect(at('  points: { A: 6 }', 16, 1)).toEqual([
      '  points: { A: 6 }',
      '               ^',
    ]);
  });

  test('is underlined to its end at most, and by one caret at least', () => {
    expect(at('abc', 2, 50)).toEqual(['abc', ' ^^']);
    expect(at('abc', 4, 0)).toEqual(['abc', '   ^']);
  });

  test('keeps the carets in place behind tabs, wide characters and accents', () => {
    expect(at('\tmark: B', 8, 1)).toEqual([' mark: B', '       ^']);
    expect(at('梁: e\u0301 x', 7, 1)).toEqual(['梁: e\u0301 x', '      ^']);
  });

  test('is cut at both ends where it is very long', () => {
    const [line = '', underline = ''] = at(
      `${'a'.repeat(300)}!${'b'.repeat(300)}`,
      301,
      1,
    );
    expect(line.startsWith('… aaa')).toBe(true);
    expect(line.endsWith('bbb …')).toBe(true);
    expect(line.length).toBeLessThan(110);
    expect(line[underline.indexOf('^')]).toBe('!');
  });

  test('shows control characters and does not obey them', () => {
    expect(at('a\u001b[2Jb', 1, 1)[0]).toBe('a\ufffd[2Jb');
  });
});
