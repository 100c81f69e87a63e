import { describe, expect, test } from 'vitest';
import { shapeWords } from '../../src/font/shape-words.ts';

describe('shapeWords', () => {
  test('shapes a word once for each set of features', () => {
    const shaped: string[] = [];
    const shape = shapeWords((word, features) => {
      shaped.push(`${word}/${features.join('+')}`);
      return [{ id: word.length, advance: 1, text: word }];
    });
    shape('one two one');
    shape('one');
    shape('one', ['smcp']);
    expect(shaped).toEqual(['one/', ' /', 'two/', 'one/smcp']);
  });

  test('keeps words and spaces in order', () => {
    const shape = shapeWords((word) => [{ id: 0, advance: word.length, text: word }]);
    expect(shape(' a  bc ').map((glyph) => glyph.text)).toEqual([
      ' ',
      'a',
      '  ',
      'bc',
      ' ',
    ]);
  });
});
