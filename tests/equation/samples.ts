import fc from 'fast-check';
import {
  bracket,
  call,
  exactly,
  figure,
  functionOf,
  integral,
  minus,
  name,
  number,
  plus,
  power,
  product,
  quotient,
  sum,
  sumOfForces,
  sumOfMoments,
  type Expression,
  type Figure,
  type Symbol,
} from '../../src/equation/index.ts';
import {
  parseQuantity,
  parseUnit,
  quantity,
  type Unit,
} from '../../src/units/index.ts';

/** A unit from its text. */
export const unit = (text: string): Unit => {
  const parsed = parseUnit(text);
  if (parsed.unit === undefined) throw new Error(`no unit: ${text}`);
  return parsed.unit;
};

/** A computed figure: so many of a unit, to so many significant figures. */
export const fig = (count: number, of: string, figures: number = 3): Figure =>
  figure(quantity(count, unit(of)), unit(of), { kind: 'figures', count: figures });

/** A given figure from its text. */
export const giv = (text: string): Figure => {
  const { quantity: read } = parseQuantity(text);
  if (read === undefined) throw new Error(`no quantity: ${text}`);
  const { si, dimension, unit: of, compound } = read;
  const print = { kind: 'given', text: read.text, compound } as const;
  return figure({ si, dimension }, of, print);
};

export const symbol = (letter: string, subscript?: string): Symbol => ({
  letter,
  ...(subscript === undefined ? {} : { subscript }),
  meaning: 'a quantity of the tests',
});

export const sym = (letter: string, subscript?: string): Expression =>
  name(symbol(letter, subscript));

/** −8.4 kip (6 ft) + R_C (21 ft): the sum of moments that many tests read. */
export const momentSum: Expression = sum(
  minus(product(giv('8.4 kip'), giv('6 ft'))),
  product(sym('R', 'C'), giv('21 ft')),
);

const units = [
  '',
  'kip',
  'ft',
  'kip ft',
  'kip/ft',
  'psf',
  'in^4',
  'mm^4',
  'kN/m^2',
  '1/K',
  '°F',
  'deg',
  'kN m/rad',
];
const names = [
  'A',
  'C',
  '2',
  'A.5',
  'x',
  'Ax',
  'θ',
  'a_b',
  '50%',
  '#1',
  '{',
  'Ä',
  '漢',
  '',
  'π',
  "a'b",
  '--',
  'Łż',
  '×',
];

const anyFigure: fc.Arbitrary<Expression> = fc.oneof(
  fc
    .tuple(
      fc.double({ noNaN: true, min: -1e9, max: 1e9 }),
      fc.constantFrom(...units),
      fc.integer({ min: 1, max: 6 }),
    )
    .map(([count, of, figures]) => fig(count, of, figures)),
  fc
    .constantFrom(
      '1,250 lb',
      '36.9e6 mm^4',
      '6 1/2 in',
      '12 ft 6 1/2 in',
      '-2 ft 6 in',
      '0',
    )
    .map(giv),
  fc.integer({ min: -9, max: 400 }).map(number),
);

const anySymbol: fc.Arbitrary<Symbol> = fc
  .record({
    letter: fc.constantFrom('R', 'w', 'θ', 'Δ', 'x', 'EI', 'ℓ', 'Ω', 'ß'),
    subscript: fc.constantFrom(...names),
    bar: fc.boolean(),
    upright: fc.boolean(),
  })
  .map((parts) => ({ ...parts, meaning: '' }));

/** Any expression at all, units fitting or not: what the printing readers have to bear. */
export const anyExpression: fc.Arbitrary<Expression> = fc.letrec<{ any: Expression }>(
  (tie) => ({
    any: fc.oneof(
      { depthSize: 'small', withCrossShrink: true },
      anyFigure,
      anySymbol.map(name),
      fc.constantFrom(
        sumOfMoments('A.5', 'clockwise'),
        sumOfMoments('B', 'counterclockwise'),
        ...(['right', 'left', 'up', 'down'] as const).map(sumOfForces),
      ),
      fc
        .array(fc.tuple(fc.constantFrom(plus, minus), tie('any')), { maxLength: 4 })
        .map((terms) => sum(...terms.map(([signed, of]) => signed(of)))),
      fc
        .array(tie('any'), { minLength: 1, maxLength: 4 })
        .map((factors) => product(...factors)),
      fc.tuple(tie('any'), tie('any')).map(([over, under]) => quotient(over, under)),
      fc
        .tuple(tie('any'), fc.constantFrom(2, 3, 4, 0.5, 1.5, -1, 1 / 3))
        .map(([base, exponent]) => power(base, exponent)),
      fc
        .tuple(tie('any'), fc.constantFrom(0, 1, 2, 5))
        .map(([of, exponent]) => bracket(of, exponent)),
      fc
        .tuple(fc.constantFrom('sin', 'cos', 'tan', 'sqrt', 'abs'), tie('any'))
        .map(([of, argument]) => call(of, argument)),
      fc.tuple(anySymbol, tie('any')).map(([of, at]) => functionOf(of, at)),
      fc
        .tuple(tie('any'), tie('any'), tie('any'))
        .map(([of, from, to]) => integral(of, { variable: symbol('x'), from, to })),
    ),
  }),
).any;

/** A figure without a unit, exactly. */
export const plain = (value: number): Figure => exactly(value, unit(''));
