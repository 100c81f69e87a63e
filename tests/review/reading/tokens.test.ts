import { describe, expect, test } from 'vitest';
import { tokensOf } from '../../../src/review/reading/tokens.ts';

/** The words of a line in short: numbers by their text, units as `unit`. */
function wordsOf(text: string, names: readonly string[] = []): readonly string[] {
  const { tokens, fault } = tokensOf(text, names);
  if (fault !== undefined) return [`${fault.start}: ${fault.message}`];
  return tokens.map((token) => {
    switch (token.kind) {
      case 'number':
        return text.slice(token.start, token.end);
      case 'unit':
        return `unit ${text.slice(token.start, token.end)}`;
      case 'name':
        return `name ${token.name}`;
      case 'function':
        return token.of;
      case 'sign':
        return token.sign;
    }
  });
}

describe('tokensOf', () => {
  test.each([
    ['8.4 kip * 6 ft', ['8.4 kip', '*', '6 ft']],
    ['1,250 lb', ['1,250 lb']],
    [`12'-6" × 2`, [`12'-6"`, '*', '2']],
    ['−(3 m)²', ['-', '(', '3 m', ')', '^', '²']],
    ['(20/2) ft', ['(', '20', '/', '2', ')', 'unit ft']],
    ['0.25 kip/ft', ['0.25 kip/ft']],
    ['1250#', ['1250#']],
  ])('%s', (text, shown) => {
    expect(wordsOf(text)).toEqual(shown);
  });

  test('a declared name is taken whole, the longest first, but not the head of a word', () => {
    expect(wordsOf('P1 + P', ['P', 'P1'])).toEqual(['name P1', '+', 'name P']);
    expect(wordsOf('P12', ['P', 'P1'])).toEqual(['name P12']);
    expect(wordsOf('wL', ['w', 'L'])).toEqual(['name w', 'name L']);
  });

  test('a declared name with a figure in it is a symbol after a length too', () => {
    expect(wordsOf('3 m * F1', ['F1'])).toEqual(['3 m', '*', 'name F1']);
    expect(wordsOf('3 m F1', ['F1'])).toEqual(['3 m', 'name F1']);
  });

  test('straight after a number a unit beats a name', () => {
    expect(wordsOf('3 m * m', ['m'])).toEqual(['3 m', '*', 'name m']);
  });

  test('an exponent takes no unit', () => {
    expect(wordsOf('10^6 mm')).toEqual(['10', '^', '6', 'unit mm']);
  });

  test('tells a character that has no meaning, control characters by their number', () => {
    expect(wordsOf('3 kN ; 2')).toEqual([
      '5: the character `;` has no meaning in an equation',
    ]);
    expect(wordsOf('3 \u0007')).toEqual([
      '2: the character U+0007 has no meaning in an equation',
    ]);
  });
});
