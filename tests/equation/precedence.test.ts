import { describe, expect, test } from 'vitest';
import { number, power, product, quotient, sum } from '../../src/equation/index.ts';
import { bindingOf, isLooser, openFactors } from '../../src/equation/precedence.ts';
import { fig, giv, sym } from './samples.ts';

describe('how tightly parts hold together', () => {
  test.each([
    ['atom', sym('x')],
    ['atom', number(3)],
    ['product', giv('3 kip')],
    ['product', giv('6 1/2 in')],
    ['product', fig(36.9e6, '', 3)],
    ['sum', number(-3)],
    ['sum', giv('-3 kip')],
    ['sum', sum(sym('a'), sym('b'))],
    ['product', quotient(sym('a'), sym('b'))],
    ['power', power(sym('a'), 2)],
  ] as const)('%s', (binding, expression) => {
    expect(bindingOf(expression)).toBe(binding);
  });

  test('sums are looser than products, names than nothing', () => {
    expect(isLooser(sum(sym('a'), sym('b')), 'product')).toBe(true);
    expect(isLooser(sym('a'), 'atom')).toBe(false);
  });

  test('products inside products are opened in print order', () => {
    const nested = [
      sym('a'),
      { kind: 'product', factors: [sym('b'), product(sym('c'), sym('d'))] } as const,
    ];
    expect(openFactors(nested)).toEqual(
      ['a', 'b', 'c', 'd'].map((letter) => sym(letter)),
    );
  });
});
