import { describe, expect, test } from 'vitest';
import {
  functionOf,
  minus,
  product,
  substitute,
  sum,
  symbolKey,
  toLinear,
} from '../../src/equation/index.ts';
import { fig, giv, momentSum, sym, symbol } from './samples.ts';

describe('figures in place of symbols', () => {
  test('a known reaction goes into the moment sum', () => {
    const known = new Map([[symbolKey(symbol('R', 'C')), fig(2.4, 'kip')]]);
    expect(toLinear(substitute(momentSum, known))).toBe(
      '−8.4 kip (6 ft) + 2.40 kip (21 ft)',
    );
  });

  test('a negative value keeps its sign to be seen', () => {
    const known = new Map([[symbolKey(symbol('R')), fig(-3, 'kip', 2)]]);
    const both = sum(sym('P'), minus(sym('R')), sym('R'));
    expect(toLinear(substitute(both, known))).toBe('P − (−3.0 kip) + (−3.0 kip)');
  });

  test('a sum that stands in for a factor gets its parentheses', () => {
    const known = new Map([[symbolKey(symbol('a')), sum(giv('6 ft'), giv('2 ft'))]]);
    expect(toLinear(substitute(product(sym('P'), sym('a')), known))).toBe(
      'P (6 ft + 2 ft)',
    );
  });

  test('a function is told from a symbol of the same letter, its argument is not', () => {
    const known = new Map([
      [symbolKey(symbol('M')), giv('9 kip ft')],
      [symbolKey(symbol('x')), giv('2 ft')],
    ]);
    expect(toLinear(substitute(functionOf(symbol('M'), sym('x')), known))).toBe(
      'M(2 ft)',
    );
  });

  test('a bar and a subscript tell symbols apart', () => {
    const known = new Map([[symbolKey(symbol('x')), giv('2 ft')]]);
    const barred = { kind: 'name', symbol: { ...symbol('x'), bar: true } } as const;
    expect(toLinear(substitute(sum(sym('x'), barred, sym('x', '1')), known))).toBe(
      '2 ft + x\u0304 + x_1',
    );
  });
});
