import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  call,
  evaluate,
  integral,
  name,
  power,
  product,
  quotient,
  sum,
  type Expression,
} from '../../src/equation/index.ts';
import { asPrinted, printedRange } from '../../src/equation/printed-range.ts';
import { fig, giv, plain, symbol, unit } from './samples.ts';

const none = new Map();

describe('what printed figures leave open', () => {
  test('a computed figure may be off by half its last place, a given one by nothing', () => {
    expect(printedRange(fig(2.4449, '', 3), none)).toEqual({
      middle: 2.44,
      half: 0.005,
      scale: 2.44,
    });
    expect(printedRange(giv('8.40 kN'), none).half).toBe(0);
  });

  test('a figure is taken as printed', () => {
    expect(asPrinted(fig(2.4449, 'kN', 3)).si).toBe(2440);
  });

  test('nothing is known of a quotient whose lower part may be zero', () => {
    const open = quotient(plain(1), fig(0.4, '', 1));
    expect(printedRange(open, none).half).toBeLessThan(1);
    const { half } = printedRange(
      quotient(plain(1), { ...fig(0.4, ''), print: { kind: 'decimals', count: 0 } }),
      none,
    );
    expect(half).toBe(Infinity);
  });

  test('the exact value always lies inside', () => {
    const size = fc.double({ noNaN: true, min: 1e-6, max: 50 });
    const value = fc.oneof(
      size,
      size.map((of) => -of),
      fc.constant(0),
    );
    const figure = fc
      .tuple(value, fc.integer({ min: 1, max: 5 }))
      .map(([count, figures]): Expression => fig(count, '', figures));
    const tree = fc.letrec<{ any: Expression }>((tie) => ({
      any: fc.oneof(
        { depthSize: 'small' },
        figure,
        fc
          .array(tie('any'), { minLength: 1, maxLength: 3 })
          .map((parts) => sum(...parts)),
        fc
          .array(tie('any'), { minLength: 1, maxLength: 3 })
          .map((parts) => product(...parts)),
        fc.tuple(tie('any'), tie('any')).map(([over, under]) => quotient(over, under)),
        tie('any').map((base) => power(base, 2)),
        tie('any').map((base) => power(base, 3)),
        tie('any').map((of) => call('sin', of)),
        tie('any').map((of) => call('abs', of)),
        fc.tuple(tie('any'), tie('any')).map(([to, of]) =>
          integral(product(of, name(symbol('x'))), {
            variable: symbol('x'),
            from: plain(0),
            to,
          }),
        ),
      ),
    })).any;
    fc.assert(
      fc.property(tree, (expression) => {
        const { middle, half, scale } = printedRange(expression, none);
        const { si } = evaluate(expression);
        // A lower part of zero leaves everything open.
        if (![si, middle, half].every(Number.isFinite)) return;
        const noise = 1e-9 * (scale + Math.abs(middle) + half);
        expect(Math.abs(si - middle)).toBeLessThanOrEqual(half + noise);
      }),
      { numRuns: 500 },
    );
  });

  test('units are worked in SI', () => {
    const { middle, half } = printedRange(fig(2.44, 'kip', 3), none);
    expect(middle).toBeCloseTo(2.44 * unit('kip').inSi, 9);
    expect(half).toBeCloseTo(0.005 * unit('kip').inSi, 9);
  });
});
