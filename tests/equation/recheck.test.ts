import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  evaluate,
  figure,
  lineToLinear,
  minus,
  name,
  product,
  quotient,
  recheck,
  reduce,
  sum,
  sumOfMoments,
  symbolValues,
  withEnoughFigures,
  zero,
  type Expression,
  type RelationSign,
  type Statement,
  type StatementLine,
} from '../../src/equation/index.ts';
import { quantity } from '../../src/units/index.ts';
import { fig, giv, momentSum, sym, symbol, unit } from './samples.ts';

const line = (
  left: Expression | undefined,
  ...chain: readonly (readonly [RelationSign, Expression])[]
): StatementLine => ({
  ...(left === undefined ? {} : { left }),
  chain: chain.map(([sign, of]) => ({ sign, of })),
});
const statement = (...lines: readonly StatementLine[]): Statement => ({ lines });
const figures = (count: number) => ({ kind: 'figures', count }) as const;

describe('equalities', () => {
  test('agree within one unit of the last printed place', () => {
    const share = line(
      sym('R', 'C'),
      ['=', quotient(fig(50.4, 'kip ft'), giv('21 ft'))],
      ['=', fig(2.4, 'kip')],
    );
    expect(recheck(statement(share))).toMatchObject([
      { line: 0, link: 1, agrees: true, needs: 0 },
    ]);
  });

  test('say how far off they are in the unit printed, and what would mend them', () => {
    // 1234.567 − 1233.195 = 1.372, but from five figures a reader finds 1.4.
    const difference = sum(fig(1234.567, 'kip', 5), minus(fig(1233.195, 'kip', 5)));
    const [found] = recheck(
      statement(line(sym('R'), ['=', difference], ['=', fig(1.372, 'kip', 4)])),
    );
    expect(found).toMatchObject({ agrees: false, needs: 2 });
    expect(found!.off).toBeCloseTo(0.028, 9);
    expect(found!.allowed).toBeCloseTo(0.001, 6);
  });

  test('that are false are not mended by any number of figures', () => {
    const wrong = line(undefined, ['=', fig(2.5, 'kip')]);
    const shown = statement(line(sym('R'), ['=', giv('2.40 kip')]), wrong);
    expect(recheck(shown)).toMatchObject([{ agrees: false, needs: null }]);
    expect(withEnoughFigures(shown)).toEqual(shown);
  });

  test('continue from the line above where a line has no left side', () => {
    const shown = statement(
      line(sym('M'), ['=', product(giv('8.4 kip'), giv('6 ft'))]),
      line(undefined, ['=', fig(50.4, 'kip ft')]),
      line(undefined, ['=', fig(604.8, 'kip in', 4)]),
    );
    expect(recheck(shown).map(({ line: at, agrees }) => [at, agrees])).toEqual([
      [1, true],
      [2, true],
    ]);
  });

  test('with an unknown symbol or a heading are left out, known symbols count exactly', () => {
    const sumOfAll = line(
      sumOfMoments('A', 'counterclockwise'),
      ['=', momentSum],
      ['=', zero()],
    );
    expect(recheck(statement(sumOfAll))).toEqual([]);
    const right = symbolValues([[symbol('R', 'C'), quantity(2.4, unit('kip'))]]);
    expect(recheck(statement(sumOfAll), right)).toMatchObject([{ agrees: true }]);
    const wrong = symbolValues([[symbol('R', 'C'), quantity(2.5, unit('kip'))]]);
    expect(recheck(statement(sumOfAll), wrong)).toMatchObject([
      { agrees: false, needs: null },
    ]);
  });

  test('lines marked so are left out', () => {
    const marked = {
      ...line(giv('2 kip'), ['=', giv('3 kip')]),
      recheck: 'none',
    } as const;
    expect(recheck(statement(marked))).toEqual([]);
  });

  test('between unlike dimensions are a programmer’s mistake', () => {
    expect(() => recheck(statement(line(giv('2 kip'), ['=', giv('2 ft')])))).toThrow(
      RangeError,
    );
  });

  test('a slope in radians may follow from plain numbers', () => {
    const slope = line(quotient(giv('1 ft'), giv('500 ft')), ['=', fig(0.002, 'rad')]);
    expect(recheck(statement(slope))).toMatchObject([{ agrees: true }]);
  });
});

describe('closures', () => {
  const closure = (reaction: number, count: number): Statement =>
    statement({
      ...line(
        sum(
          minus(product(giv('8.4 kip'), giv('7 ft'))),
          product(
            figure(quantity(reaction, unit('kip')), unit('kip'), figures(count)),
            giv('21 ft'),
          ),
        ),
        ['=', zero()],
      ),
      recheck: 'closure',
    });

  test('may miss zero by the rounding of their printed factors', () => {
    // The reaction is 2.8 exactly; with a load of a third it would be 2.7999…
    expect(recheck(closure(2.8, 2))).toMatchObject([{ agrees: true }]);
    const third = statement({
      ...line(
        sum(product(fig(10 / 3, 'kip', 3), giv('3 ft')), minus(giv('10 kip ft'))),
        ['=', zero()],
      ),
      recheck: 'closure',
    });
    const [found] = recheck(third);
    expect(found).toMatchObject({ agrees: true });
    expect(found!.off).toBeCloseTo(0.01, 9);
    expect(found!.allowed).toBeCloseTo(0.015, 9);
  });

  test('may not miss it by more', () => {
    const [found] = recheck(closure(2.9, 2));
    expect(found).toMatchObject({ agrees: false, needs: null });
    expect(found!.off).toBeCloseTo(2.1, 9);
  });

  test('with a lower part that may be zero as printed prove nothing until it shows figures', () => {
    const ratio = quotient(giv('3 kip'), {
      ...fig(0.4, 'ft'),
      print: { kind: 'decimals', count: 0 },
    });
    const shown = statement({
      ...line(sum(ratio, minus(giv('7.5 kip/ft'))), ['=', zero()]),
      recheck: 'closure',
    });
    expect(recheck(shown)).toMatchObject([{ agrees: false, needs: 1 }]);
  });

  test('of given factors alone allow nothing but noise', () => {
    const exact = sum(product(giv('0.1 kip'), giv('3 ft')), minus(giv('0.3 kip ft')));
    const off = sum(product(giv('0.1 kip'), giv('3 ft')), minus(giv('0.3001 kip ft')));
    expect(recheck(statement(line(exact, ['=', zero()])))).toMatchObject([
      { agrees: true },
    ]);
    expect(recheck(statement(line(off, ['=', zero()])))).toMatchObject([
      { agrees: false },
    ]);
  });
});

describe('inequalities', () => {
  test('hold as printed and exactly', () => {
    const below = line(fig(0.4321, 'in'), ['≤', fig(0.7, 'in', 2)]);
    expect(recheck(statement(below))).toMatchObject([{ agrees: true }]);
  });

  test('get the figures that show them', () => {
    const close = statement(line(fig(1.0004, 'in', 3), ['>', fig(1, 'in', 3)]));
    expect(recheck(close)).toMatchObject([{ agrees: false, needs: 2 }]);
    const mended = withEnoughFigures(close);
    expect(recheck(mended)).toMatchObject([{ agrees: true }]);
    expect(lineToLinear(mended.lines[0]!)).toBe('1.0004 in > 1.00 in');
  });

  test.each<readonly [RelationSign, boolean]>([
    ['<', false],
    ['>', false],
    ['≠', false],
    ['≤', true],
    ['≥', true],
  ])('of equal numbers: %s is %s', (sign, agrees) => {
    expect(recheck(statement(line(giv('12 in'), [sign, giv('1 ft')])))).toMatchObject([
      { agrees },
    ]);
  });
});

describe('enough figures', () => {
  test('only the lines that need it change, and given figures never', () => {
    const shown = statement(
      line(
        sym('a'),
        ['=', product(giv('2.5 kip'), giv('3 ft'))],
        ['=', fig(7.5, 'kip ft')],
      ),
      line(
        sym('R'),
        ['=', sum(fig(1234.567, 'kip', 5), minus(giv('1233.195 kip')))],
        ['=', fig(1.372, 'kip', 4)],
      ),
    );
    const mended = withEnoughFigures(shown);
    expect(mended.lines[0]).toEqual(shown.lines[0]);
    expect(lineToLinear(mended.lines[1]!)).toBe(
      'R = 1234.567 kip − 1233.195 kip = 1.372 kip',
    );
  });

  test('a figure that the next line needs finer is made finer where it stands', () => {
    const shown = statement(
      line(sym('w'), ['=', fig(2 / 3, 'kip/ft', 2)]),
      line(undefined, ['=', fig(2000 / 3, 'lb/ft', 4)]),
    );
    const mended = withEnoughFigures(shown);
    expect(mended.lines.map(lineToLinear)).toEqual([
      'w = 0.6667 kip/ft',
      '= 666.7 lb/ft',
    ]);
    expect(recheck(mended).every(({ agrees }) => agrees)).toBe(true);
  });

  test('every true line is made to rework from the page, whatever its rounding', () => {
    const factor = fc.double({ noNaN: true, min: 0.01, max: 1000 });
    const terms = fc.array(
      fc.tuple(fc.boolean(), factor, factor, fc.integer({ min: 2, max: 4 })),
      { minLength: 1, maxLength: 5 },
    );
    fc.assert(
      fc.property(
        terms,
        factor,
        fc.integer({ min: 2, max: 4 }),
        (parts, divisor, count) => {
          const over = sum(
            ...parts.map(([adds, p, a, shown]) => {
              const term = product(fig(p, 'kN', shown), fig(a, 'm', shown));
              return adds ? term : minus(term);
            }),
          );
          const scale = parts.reduce((total, [, p, a]) => total + p * a, 0);
          const worked = quotient(over, fig(divisor, 'm', count));
          // A small difference of large numbers has fewer sound digits than there are to print.
          if (Math.abs(evaluate(over).si) < 1e-4 * scale * 1000) return;
          const shown = statement(
            line(sym('R'), ['=', worked]),
            line(undefined, ['=', reduce(worked, figures(count))]),
          );
          const mended = withEnoughFigures(shown);
          for (const link of recheck(mended)) {
            expect(link.agrees, mended.lines.map(lineToLinear).join(' ')).toBe(true);
          }
        },
      ),
      { numRuns: 300 },
    );
  });

  test('a closure of rounded factors always closes when it closes exactly', () => {
    const load = fc.double({ noNaN: true, min: 0.1, max: 500 });
    fc.assert(
      fc.property(
        load,
        load,
        load,
        fc.integer({ min: 2, max: 5 }),
        (p, a, span, count) => {
          const shown = statement({
            ...line(
              sum(
                minus(product(fig(p, 'kN', count), fig(a, 'm', count))),
                product(fig((p * a) / span, 'kN', count), fig(span, 'm', count)),
              ),
              ['=', zero()],
            ),
            recheck: 'closure',
          });
          expect(recheck(shown)).toMatchObject([{ agrees: true }]);
        },
      ),
    );
  });

  test('names of symbols are not figures', () => {
    const shown = statement(line(name(symbol('R')), ['=', fig(2.4, 'kip')]));
    expect(withEnoughFigures(shown)).toEqual(shown);
  });
});
