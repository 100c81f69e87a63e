import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  call,
  functionOf,
  integral,
  lineToLinear,
  minus,
  number,
  power,
  product,
  quotient,
  sum,
  sumOfForces,
  sumOfMoments,
  symbolText,
  toLinear,
  zero,
  type Expression,
} from '../../src/equation/index.ts';
import { anyExpression, fig, giv, momentSum, sym, symbol } from './samples.ts';

const cases: readonly (readonly [text: string, expression: Expression])[] = [
  ['−8.4 kip (6 ft) + R_C (21 ft)', momentSum],
  ['50.4 kip·ft / (21 ft)', quotient(fig(50.4, 'kip ft'), giv('21 ft'))],
  ['P a / L', quotient(product(sym('P'), sym('a')), sym('L'))],
  ['(P / L) (6 ft)', product(quotient(sym('P'), sym('L')), giv('6 ft'))],
  ['(a + b) / (2 c)', quotient(sum(sym('a'), sym('b')), product(number(2), sym('c')))],
  ['P − (−3.0 kip)', sum(sym('P'), minus(fig(-3, 'kip', 2)))],
  ['(6 ft)²', power(giv('6 ft'), 2)],
  ['x^(1/2)', power(sym('x'), 0.5)],
  ['(P / 2)³', power(quotient(sym('P'), number(2)), 3)],
  ['10 kip sin(60°)', product(giv('10 kip'), call('sin', giv('60 deg')))],
  ['√(x + 1)', call('sqrt', sum(sym('x'), number(1)))],
  ['|x|', call('abs', sym('x'))],
  ['M(6 ft)', functionOf(symbol('M'), giv('6 ft'))],
  [
    '∫(0 ft to 6 ft) V dx',
    integral(sym('V'), { variable: symbol('x'), from: giv('0 ft'), to: giv('6 ft') }),
  ],
  ['ΣF_x', sumOfForces('left')],
  ['ΣF_y', sumOfForces('up')],
  ['12 ft 6 1/2 in', giv('12 ft 6 1/2 in')],
];

describe('expressions on one line', () => {
  test.each(cases)('%s', (text, expression) => {
    expect(toLinear(expression)).toBe(text);
  });

  test('a whole line', () => {
    const line = {
      left: sumOfMoments('A', 'counterclockwise'),
      chain: [
        { sign: '=', of: momentSum },
        { sign: '=', of: zero() },
      ],
    } as const;
    expect(lineToLinear(line)).toBe('ΣM_A = −8.4 kip (6 ft) + R_C (21 ft) = 0');
    expect(lineToLinear({ chain: [{ sign: '=', of: zero() }] })).toBe('= 0');
  });

  test('a bar is a combining mark on its letter', () => {
    expect(symbolText({ ...symbol('x', '2'), bar: true })).toBe('x\u0304_2');
  });

  test('parentheses always pair', () => {
    fc.assert(
      fc.property(anyExpression, (expression) => {
        const text = toLinear(expression);
        let depth = 0;
        for (const character of text) {
          if (character === '(') depth += 1;
          if (character === ')') depth -= 1;
          expect(depth).toBeGreaterThanOrEqual(0);
        }
        expect(depth).toBe(0);
      }),
    );
  });
});
