import { describe, expect, test } from 'vitest';
import { tooDeepAt } from '../../../src/project/yaml/nesting.ts';

describe('a text that nests too deep', () => {
  test.each([
    ['brackets', '[[[[', 2],
    ['braces within brackets', '[ { [ {', 4],
    ['steps of the indent', 'a:\n b:\n  c:\n   d: 1\n', 15],
    ['entries on one line', '- - - x', 0],
    ['a mixture', 'a:\n  - - [ x ]', 5],
  ])('is found out by its %s', (_, text, at) => {
    expect(tooDeepAt(text, 3)).toBe(at);
  });

  test('is told from one that comes back in time', () => {
    expect(tooDeepAt('[ a ]\n'.repeat(50), 3)).toBeUndefined();
    expect(tooDeepAt('a:\n  b: 1\n'.repeat(50), 3)).toBeUndefined();
    expect(tooDeepAt('- a\n- b\n\n   \n- c\n', 3)).toBeUndefined();
    expect(tooDeepAt('a: ]]]]]] [[\n', 3)).toBeUndefined();
    expect(tooDeepAt('', 0)).toBeUndefined();
  });

  test('is measured quickly, whatever it holds', () => {
    const million = 1_000_000;
    for (const text of [
      '['.repeat(million),
      '- '.repeat(million / 2),
      ' \n'.repeat(million / 2),
      '[]'.repeat(million / 2),
    ])
      tooDeepAt(text, 200);
    expect(tooDeepAt('- '.repeat(million / 2), 200)).toBe(0);
  });
});
