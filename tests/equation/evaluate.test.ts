import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  call,
  evaluate,
  functionOf,
  integral,
  minus,
  name,
  number,
  power,
  product,
  quotient,
  substitute,
  sum,
  sumOfMoments,
  symbolKey,
  symbolValues,
  zero,
  type Expression,
} from '../../src/equation/index.ts';
import { dimensions, quantity } from '../../src/units/index.ts';
import { fig, giv, momentSum, sym, symbol, unit } from './samples.ts';

describe('the value of an expression', () => {
  test('a moment sum with the right reaction is zero', () => {
    const values = symbolValues([[symbol('R', 'C'), quantity(2.4, unit('kip'))]]);
    const { si, dimension } = evaluate(momentSum, values);
    expect(Math.abs(si)).toBeLessThan(1e-9);
    expect(dimension).toEqual(dimensions.moment);
  });

  test('units of any system meet in one value', () => {
    expect(evaluate(sum(giv('1 m'), minus(giv('1000 mm')))).si).toBe(0);
    expect(evaluate(product(giv('1 kip'), giv('1 ft'))).si).toBeCloseTo(1355.818, 3);
  });

  test('sines take degrees and plain radians', () => {
    expect(evaluate(call('sin', giv('30 deg'))).si).toBeCloseTo(0.5, 14);
    expect(evaluate(call('cos', number(0))).si).toBe(1);
    expect(evaluate(call('tan', giv('45 deg'))).si).toBeCloseTo(1, 14);
  });

  test('roots halve a dimension, absolute values keep it', () => {
    expect(evaluate(call('sqrt', giv('4 in^2')))).toEqual({
      si: 0.0508,
      dimension: dimensions.length,
    });
    expect(evaluate(call('abs', giv('-3 kN'))).si).toBe(3000);
  });

  test('an integral of a polynomial of the ninth power is exact', () => {
    const x = symbol('x');
    const of = power(name(x), 9);
    const whole = integral(of, { variable: x, from: zero(), to: number(2) });
    expect(evaluate(whole).si).toBeCloseTo(2 ** 10 / 10, 10);
  });

  test('an integral has the dimension of area under a curve', () => {
    const x = symbol('x');
    const shear = sum(giv('9 kN'), minus(product(giv('2 kN/m'), name(x))));
    const area = integral(shear, { variable: x, from: giv('0 m'), to: giv('3 m') });
    const { si, dimension } = evaluate(area);
    expect(si).toBeCloseTo(18_000, 9);
    expect(dimension).toEqual(dimensions.moment);
  });

  test('a bare zero fits into any sum, a radian stands for a number', () => {
    expect(evaluate(sum(zero(), giv('3 kN'))).dimension).toEqual(dimensions.force);
    expect(evaluate(sum(giv('0.002 rad'), minus(number(0.001)))).si).toBeCloseTo(
      0.001,
      15,
    );
  });

  test.each<readonly [string, Expression]>([
    ['a sum of unlike dimensions', sum(giv('3 kN'), giv('2 m'))],
    ['a sum of a force and a number', sum(giv('3 kN'), number(2))],
    ['a symbol without a value', sym('R', 'C')],
    ['a heading', sumOfMoments('A', 'clockwise')],
    ['the sine of a length', call('sin', giv('3 m'))],
    ['a function without a value', functionOf(symbol('M'), giv('3 m'))],
  ])('%s is a programmer’s mistake', (_, expression) => {
    expect(() => evaluate(expression)).toThrow(RangeError);
  });
});

describe('substitution', () => {
  const figures = new Map<string, Expression>([
    [symbolKey(symbol('P')), giv('8.4 kip')],
    [symbolKey(symbol('a')), giv('6 ft')],
    [symbolKey(symbol('R', 'A')), fig(-3, 'kip', 2)],
  ]);

  test('substituting and then working gives what working with the values gives', () => {
    const expression = quotient(product(sym('P'), sym('a')), sym('a'));
    const values = symbolValues([
      [symbol('P'), quantity(8.4, unit('kip'))],
      [symbol('a'), quantity(6, unit('ft'))],
    ]);
    expect(evaluate(substitute(expression, figures)).si).toBe(
      evaluate(expression, values).si,
    );
  });

  test('values in one map and figures in the other always agree', () => {
    const terms = fc.array(
      fc.tuple(fc.integer({ min: -99, max: 99 }), fc.integer({ min: -99, max: 99 })),
      { minLength: 1, maxLength: 5 },
    );
    fc.assert(
      fc.property(terms, (pairs) => {
        const names = pairs.map(
          (_, i) => [symbol('P', `${i}`), symbol('a', `${i}`)] as const,
        );
        const whole = sum(...names.map(([p, a]) => product(name(p), name(a))));
        const values = symbolValues(
          pairs.flatMap(([p, a], i) => [
            [names[i]![0], quantity(p, unit('kN'))] as const,
            [names[i]![1], quantity(a, unit('m'))] as const,
          ]),
        );
        const standIns = new Map(
          pairs.flatMap(([p, a], i) => [
            [symbolKey(names[i]![0]), fig(p, 'kN')] as const,
            [symbolKey(names[i]![1]), fig(a, 'm')] as const,
          ]),
        );
        const expected = pairs.reduce((total, [p, a]) => total + p * a * 1000, 0);
        expect(evaluate(whole, values).si).toBe(expected);
        expect(evaluate(substitute(whole, standIns)).si).toBe(expected);
      }),
    );
  });

  test('unknown symbols stay, and so does the variable of an integral', () => {
    const x = symbol('x');
    const known = new Map([[symbolKey(x), giv('2 m')]]);
    const area = integral(sum(name(x), sym('c')), {
      variable: x,
      from: zero(),
      to: name(x),
    });
    expect(substitute(area, known)).toEqual(
      integral(sum(name(x), sym('c')), { variable: x, from: zero(), to: giv('2 m') }),
    );
  });
});
