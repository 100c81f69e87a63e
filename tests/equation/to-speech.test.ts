import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  call,
  integral,
  lineToSpeech,
  minus,
  number,
  power,
  product,
  quotient,
  sum,
  sumOfForces,
  sumOfMoments,
  toSpeech,
  zero,
  type Expression,
} from '../../src/equation/index.ts';
import { anyExpression, fig, giv, momentSum, sym, symbol } from './samples.ts';

const cases: readonly (readonly [said: string, expression: Expression])[] = [
  ['minus 8.4 kip times 6 ft plus R sub C times 21 ft', momentSum],
  ['50.4 kip ft over 21 ft', quotient(fig(50.4, 'kip ft'), giv('21 ft'))],
  [
    'the fraction w times L squared over 8, end of fraction,',
    quotient(product(sym('w'), power(sym('L'), 2)), number(8)),
  ],
  ['P minus negative 3.0 kip', sum(sym('P'), minus(fig(-3, 'kip', 2)))],
  [
    'w times open parenthesis a plus b close parenthesis',
    product(sym('w'), sum(sym('a'), sym('b'))),
  ],
  ['36.9 times 10 to the 6 mm to the fourth', giv('36.9e6 mm^4')],
  ['12 times 10 to the minus 6 per K', giv('12e-6 1/K')],
  ['12 ft 6 and 1/2 in', giv('12 ft 6 1/2 in')],
  ['2 kN per m squared', giv('2 kN/m^2')],
  ['20 degrees Fahrenheit', giv('20 F')],
  ['the sine of 60 degrees', call('sin', giv('60 deg'))],
  ['theta sub B', sym('θ', 'B')],
  [
    'the integral from 0 ft to 6 ft of V with respect to x',
    integral(sym('V'), { variable: symbol('x'), from: giv('0 ft'), to: giv('6 ft') }),
  ],
  ['the sum of the vertical forces, upward positive,', sumOfForces('up')],
];

describe('expressions read out', () => {
  test.each(cases)('%s', (said, expression) => {
    expect(toSpeech(expression)).toBe(said);
  });

  test('a whole line', () => {
    const line = {
      left: sumOfMoments('A', 'counterclockwise'),
      chain: [
        { sign: '=', of: momentSum },
        { sign: '=', of: zero() },
      ],
    } as const;
    expect(lineToSpeech(line)).toBe(
      'the sum of the moments about A, counterclockwise positive, equals minus 8.4 kip times 6 ft plus R sub C times 21 ft, equals 0',
    );
  });

  test('no sign of the page is left to stumble over', () => {
    fc.assert(
      fc.property(anyExpression, (expression) => {
        // A point may be called ×; that is its name.
        expect(toSpeech(expression).replaceAll('sub ×', '')).not.toMatch(
          /[−×·⁰¹²³⁴⁵⁶⁷⁸⁹°Σ∫√\u202f]|undefined/,
        );
      }),
    );
  });
});
