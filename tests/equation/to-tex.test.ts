import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  call,
  functionOf,
  integral,
  minus,
  number,
  power,
  product,
  quotient,
  sum,
  sumOfForces,
  sumOfMoments,
  toTex,
  zero,
  type Expression,
} from '../../src/equation/index.ts';
import { layOut } from './katex.ts';
import { anyExpression, fig, giv, momentSum, sym, symbol, unit } from './samples.ts';

const cases: readonly (readonly [what: string, expression: Expression, tex: string])[] =
  [
    [
      'the first factor bare and later figures in parentheses',
      momentSum,
      '-8.4\\,\\text{kip}\\,(6\\,\\text{ft}) + R_{\\mathrm{C}}\\,(21\\,\\text{ft})',
    ],
    [
      'a term set off underlined with its sign',
      {
        kind: 'sum',
        terms: [
          { sign: -1, of: sym('R', 'C'), isSetOff: true },
          { sign: 1, of: sym('P'), isSetOff: true },
        ],
      },
      '\\underline{-R_{\\mathrm{C}}} \\;\\underline{{+}\\;P}',
    ],
    [
      'a factor before a figure',
      product(number(1.2), giv('3.0 kip')),
      '1.2\\,(3.0\\,\\text{kip})',
    ],
    ['names side by side', product(sym('E'), sym('I')), 'E\\,I'],
    [
      'a quotient as a fraction',
      quotient(fig(50.4, 'kip ft'), giv('21 ft')),
      '\\frac{50.4\\,\\text{kip}{\\cdot}\\text{ft}}{21\\,\\text{ft}}',
    ],
    [
      'a minus after an operator in parentheses',
      sum(sym('P'), minus(fig(-3, 'kip', 2))),
      'P - (-3.0\\,\\text{kip})',
    ],
    [
      'a minus at the head bare',
      product(fig(-3, 'kip', 2), giv('6 ft')),
      '-3.0\\,\\text{kip}\\,(6\\,\\text{ft})',
    ],
    [
      'a sum as a factor in parentheses',
      product(sym('w'), sum(sym('a'), sym('b'))),
      'w\\,(a + b)',
    ],
    [
      'large parentheses round a fraction',
      product(sym('w'), sum(quotient(sym('a'), number(2)), sym('b'))),
      'w\\,\\left(\\frac{a}{2} + b\\right)',
    ],
    ['a power of a name', power(sym('L'), 4), 'L^{4}'],
    ['a power of a figure', power(giv('6 ft'), 2), '(6\\,\\text{ft})^{2}'],
    ['a broken power', power(sym('x'), 0.5), 'x^{1/2}'],
    [
      'a power of plain numbers after a number',
      product(number(3), power(number(10), 2)),
      '3\\,(10^{2})',
    ],
    ['degrees', call('sin', giv('60 deg')), '\\sin(60^{\\circ})'],
    ['roots', call('sqrt', sym('x')), '\\sqrt{x}'],
    ['absolute values', call('abs', sym('x')), '\\left|x\\right|'],
    ['a function', functionOf(symbol('M'), sym('x')), 'M(x)'],
    [
      'an integral',
      integral(sym('V'), { variable: symbol('x'), from: giv('0 ft'), to: giv('6 ft') }),
      '\\int_{0\\,\\text{ft}}^{6\\,\\text{ft}} V\\,\\mathrm{d}x',
    ],
    [
      'a heading of moments',
      sumOfMoments('A', 'counterclockwise'),
      '{\\overset{+}{\\circlearrowleft}}\\,\\sum M_{\\mathrm{A}}',
    ],
    [
      'a heading of forces to the right',
      sumOfForces('right'),
      '{\\overset{+}{\\rightarrow}}\\,\\sum F_{x}',
    ],
    ['a heading of forces up', sumOfForces('up'), '{+}{\\uparrow}\\,\\sum F_{y}'],
    ['a nought with its unit', zero(unit('kip')), '0\\,\\text{kip}'],
    ['a power of ten', giv('36.9e6 mm^4'), '36.9\\times 10^{6}\\,\\text{mm}^{4}'],
    ['thousands by a comma', giv('1,250 lb'), '1{,}250\\,\\text{lb}'],
    ['thousands by a thin space', fig(29000, 'kN', 5), '29\\,000\\,\\text{kN}'],
    ['a fraction of an inch', giv('6 1/2 in'), '6\\,\\tfrac{1}{2}\\,\\text{in}'],
    [
      'feet and inches',
      giv('12 ft 6 1/2 in'),
      '12\\,\\text{ft}\\;6\\,\\tfrac{1}{2}\\,\\text{in}',
    ],
    ['a unit that only divides', giv('12e-6 1/K'), '12\\times 10^{-6}/\\text{K}'],
    ['a temperature change', giv('20 F'), '20\\,{}^{\\circ}\\text{F}'],
  ];

describe('expressions as TeX', () => {
  test.each(cases)('print %s', (_, expression, tex) => {
    expect(toTex(expression)).toBe(tex);
  });

  test('strike cancelled units through, in part where only some cancel', () => {
    const { kind, quantity, unit: of, print } = fig(65, 'lb/ft^2', 2);
    const struck = (cancelled: readonly string[]): string =>
      toTex({ kind, quantity, unit: of, print, cancelled });
    expect(struck(['ft', 'ft'])).toBe('65\\,\\text{lb}/\\cancel{\\text{ft}^{2}}');
    expect(struck(['ft'])).toBe(
      '65\\,\\text{lb}/(\\text{ft}{\\cdot}\\cancel{\\text{ft}})',
    );
  });

  test('always parse in the typesetter without a warning', async () => {
    await fc.assert(
      fc.asyncProperty(anyExpression, async (expression) => {
        const { warnings } = await layOut(toTex(expression));
        expect(warnings).toEqual([]);
      }),
      { numRuns: 400 },
    );
  });
});
