import { describe, expect, test } from 'vitest';
import {
  given,
  minus,
  negate,
  number,
  plus,
  product,
  sum,
  toLinear,
  zero,
} from '../../src/equation/index.ts';
import { parseQuantity } from '../../src/units/index.ts';
import { fig, giv, momentSum, sym, unit } from './samples.ts';

describe('builders keep trees tidy', () => {
  test('one added term alone is itself, one taken away is a sum', () => {
    expect(sum(sym('P'))).toEqual(sym('P'));
    expect(sum(minus(sym('P')))).toMatchObject({ kind: 'sum' });
  });

  test('an added sum is opened, one taken away is not', () => {
    const inner = sum(sym('a'), minus(sym('b')));
    expect(toLinear(sum(sym('c'), inner))).toBe('c + a − b');
    expect(toLinear(sum(sym('c'), minus(inner)))).toBe('c − (a − b)');
  });

  test('an added figure or product that begins with a minus is taken away', () => {
    expect(toLinear(sum(sym('a'), fig(-3, 'kip', 2)))).toBe('a − 3.0 kip');
    expect(toLinear(sum(sym('a'), product(fig(-3, 'kip', 2), giv('6 ft'))))).toBe(
      'a − 3.0 kip (6 ft)',
    );
    expect(toLinear(sum(sym('a'), giv('-2 ft 6 in')))).toBe('a − 2 ft 6 in');
  });

  test('the minus of a figure that is taken away stays to be seen', () => {
    expect(toLinear(sum(sym('P'), minus(fig(-3, 'kip', 2))))).toBe('P − (−3.0 kip)');
  });

  test('products are opened, one factor alone is itself', () => {
    const inner = product(sym('a'), sym('b'));
    expect(product(inner, sym('c'))).toEqual(product(sym('a'), sym('b'), sym('c')));
    expect(product(sym('a'))).toEqual(sym('a'));
  });

  test('the opposite of a sum turns every sign, twice is the same again', () => {
    expect(toLinear(negate(momentSum))).toBe('8.4 kip (6 ft) − R_C (21 ft)');
    expect(negate(negate(momentSum))).toEqual(momentSum);
    expect(toLinear(negate(giv('8.40 kip')))).toBe('−8.40 kip');
    expect(negate(negate(giv('8.40 kip')))).toEqual(giv('8.40 kip'));
    expect(toLinear(negate(sym('P')))).toBe('−P');
    expect(toLinear(negate(giv('0 kip')))).toBe('0 kip');
  });

  test('given quantities print as given, plain numbers with all their digits', () => {
    const { quantity } = parseQuantity('1,250.0 lb');
    expect(toLinear(given(quantity!))).toBe('1,250.0 lb');
    expect(toLinear(number(0.125))).toBe('0.125');
    expect(toLinear(zero(unit('kip')))).toBe('0 kip');
    expect(toLinear(zero())).toBe('0');
    expect(toLinear(sum(plus(number(-5))))).toBe('−5');
  });
});
