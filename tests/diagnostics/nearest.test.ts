import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { nearest } from '../../src/diagnostics/index.ts';

describe('the nearest word', () => {
  test.each([
    ['titel', 'title'],
    ['tilte', 'title'],
    ['supprots', 'supports'],
    ['pinned', 'pin'],
    ['b1', 'B1'],
    ['deflection_limit', 'deflection_limits'],
  ])('to %s is %s', (word, candidate) => {
    expect(nearest(word, ['mark', candidate, 'points'])).toBe(candidate);
  });

  test('is none where more than a third is wrong', () => {
    expect(nearest('rabbit', ['mark', 'kind', 'points'])).toBeUndefined();
    expect(nearest('Q', ['A', 'B'])).toBeUndefined();
    expect(nearest('x', [])).toBeUndefined();
  });

  test('is the closest, and the first of equals', () => {
    expect(nearest('pont', ['points', 'point', 'pint'])).toBe('point');
    expect(nearest('ab1', ['ab2', 'ab3'])).toBe('ab2');
  });

  test('to a word that is among them is that word', () => {
    fc.assert(
      fc.property(
        fc.array(fc.string({ minLength: 1, maxLength: 8 }), { minLength: 1 }),
        (words) => {
          const word = words.at(-1) ?? '';
          expect(nearest(word, words)?.toLowerCase()).toBe(word.toLowerCase());
        },
      ),
    );
  });
});
