import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  cancelUnits,
  evaluate,
  minus,
  number,
  power,
  product,
  quotient,
  reduce,
  reduceTerms,
  resultUnit,
  sum,
  toLinear,
  toTex,
  withConversion,
  type Expression,
  type Figure,
} from '../../src/equation/index.ts';
import { sameUnit, unitText } from '../../src/units/index.ts';
import { fig, giv, momentSum, sym, unit } from './samples.ts';

const three = { kind: 'figures', count: 3 } as const;

/** Struck symbols in reading order, a power each. */
const struck = (expression: Expression): readonly string[] => {
  const found: string[] = [];
  const visit = (part: Expression): void => {
    if (part.kind === 'figure') found.push(...(part.cancelled ?? []));
    if (part.kind === 'product') part.factors.forEach(visit);
    if (part.kind === 'quotient') [part.over, part.under].forEach(visit);
    if (part.kind === 'power') visit(part.base);
    if (part.kind === 'sum') part.terms.forEach((term) => visit(term.of));
  };
  visit(expression);
  return found;
};

describe('units that cancel', () => {
  test('feet above against feet below', () => {
    const share = cancelUnits(quotient(fig(50.4, 'kip ft'), giv('21 ft')));
    expect(toTex(share)).toBe(
      '\\frac{50.4\\,\\text{kip}{\\cdot}\\cancel{\\text{ft}}}{21\\,\\cancel{\\text{ft}}}',
    );
  });

  test('the foot of a line load against a length', () => {
    const resultant = cancelUnits(product(giv('0.25 kip/ft'), giv('21 ft')));
    expect(toTex(resultant)).toBe(
      '0.25\\,\\text{kip}/\\cancel{\\text{ft}}\\,(21\\,\\cancel{\\text{ft}})',
    );
  });

  test('a moment leaves nothing to strike, inches never strike feet', () => {
    expect(struck(cancelUnits(product(giv('8.4 kip'), giv('6 ft'))))).toEqual([]);
    expect(struck(cancelUnits(quotient(giv('6 ft'), giv('3 in'))))).toEqual([]);
  });

  test('each term of a sum by itself', () => {
    const both = sum(product(giv('2 kip/ft'), giv('3 ft')), minus(giv('4 kip')));
    expect(struck(cancelUnits(both))).toEqual(['ft', 'ft']);
  });

  test('an area load is written out where a width meets it, and one of its two feet is struck', () => {
    const strip = cancelUnits(product(giv('65 psf'), giv('8.5 ft')));
    expect(toTex(strip)).toBe(
      '65\\,\\text{lb}/(\\text{ft}{\\cdot}\\cancel{\\text{ft}})\\,(8.5\\,\\cancel{\\text{ft}})',
    );
    expect(toLinear(cancelUnits(product(giv('65 psf'), number(2))))).toBe('65 psf (2)');
  });

  test('powers of figures count as often as they say', () => {
    const ratio = cancelUnits(quotient(power(giv('6 ft'), 2), giv('21 ft^2')));
    expect(struck(ratio)).toEqual(['ft', 'ft', 'ft']);
    const half = cancelUnits(quotient(power(giv('6 ft'), 2), giv('21 ft')));
    // The base of a square can only be struck whole.
    expect(struck(half)).toEqual([]);
  });

  test('feet and inches given together are not struck, nor is their partner', () => {
    const whole = cancelUnits(product(giv('0.25 kip/ft'), giv('12 ft 6 in')));
    expect(struck(whole)).toEqual([]);
  });

  test('a symbol stands in the way of nothing', () => {
    const share = cancelUnits(quotient(product(sym('P'), giv('6 ft')), giv('21 ft')));
    expect(struck(share)).toEqual(['ft', 'ft']);
  });

  test('cancelling twice is cancelling once', () => {
    const share = cancelUnits(quotient(fig(50.4, 'kip ft'), giv('21 ft')));
    expect(cancelUnits(share)).toEqual(share);
  });

  test('what is left unstruck is the unit of the result, for any product of figures', () => {
    const figures = fc.array(
      fc.tuple(
        fc.constantFrom(
          'kip',
          'ft',
          'kip/ft',
          'kip/ft^2',
          'in',
          'kip ft',
          '1/ft',
          'in^4',
          'ft^2',
        ),
        fc.boolean(),
        fc.integer({ min: 1, max: 3 }),
      ),
      { minLength: 1, maxLength: 6 },
    );
    fc.assert(
      fc.property(figures, (parts) => {
        const written = (wanted: boolean): Expression =>
          product(
            number(1),
            ...parts
              .filter(([, above]) => above === wanted)
              .map(([of, , raised]) =>
                raised === 1 ? fig(2, of) : power(fig(2, of), raised),
              ),
          );
        const whole = quotient(written(true), written(false));
        const marked = cancelUnits(whole);
        expect(evaluate(marked)).toEqual(evaluate(whole));
        // Struck powers above and below balance, symbol by symbol.
        const count = (expression: Expression, around: number): Map<string, number> => {
          const totals = new Map<string, number>();
          const add = (symbol: string, by: number) =>
            totals.set(symbol, (totals.get(symbol) ?? 0) + by);
          const visit = (part: Expression, by: number): void => {
            if (part.kind === 'product') part.factors.forEach((f) => visit(f, by));
            if (part.kind === 'quotient') {
              visit(part.over, by);
              visit(part.under, -by);
            }
            if (part.kind === 'power') visit(part.base, by * part.exponent);
            if (part.kind === 'figure') {
              for (const symbol of part.cancelled ?? []) {
                const power = part.unit.factors.find((f) => f.symbol === symbol)!.power;
                add(symbol, Math.sign(power) * by);
              }
            }
          };
          visit(expression, around);
          return totals;
        };
        for (const left of count(marked, 1).values()) expect(left).toBe(0);
      }),
    );
  });
});

describe('the unit of a result', () => {
  test.each<readonly [string, Expression]>([
    ['kip ft', product(giv('6 ft'), giv('8.4 kip'))],
    ['kip', quotient(fig(50.4, 'kip ft'), giv('21 ft'))],
    ['lb/ft', product(giv('65 psf'), giv('8.5 ft'))],
    ['psf', product(giv('65 psf'), number(1.6))],
    ['kip in^2', product(giv('29000 ksi'), giv('204 in^4'))],
    ['N mm^2', product(giv('200 MPa'), giv('36.9e6 mm^4'))],
    ['kip', sum(number(0), giv('3 kip'))],
    ['1', quotient(giv('21 ft'), giv('6 ft'))],
  ])('%s', (text, expression) => {
    expect(unitText(resultUnit(expression)!, 'data')).toBe(text);
  });

  test('a symbol has none', () => {
    expect(resultUnit(momentSum)).toBeUndefined();
  });
});

describe('reducing', () => {
  test('works figures into one, in the unit that the working gives or that is asked for', () => {
    const moment = product(giv('8.4 kip'), giv('6 ft'));
    expect(toLinear(reduce(moment, three))).toBe('50.4 kip·ft');
    expect(toLinear(reduce(moment, three, unit('kip in')))).toBe('605 kip·in');
    expect(() => reduce(momentSum, three)).toThrow(RangeError);
  });

  test('works the terms of a sum that have no symbol', () => {
    expect(toLinear(reduceTerms(momentSum, three))).toBe('−50.4 kip·ft + R_C (21 ft)');
    expect(reduceTerms(sym('P'), three)).toEqual(sym('P'));
  });
});

describe('conversions', () => {
  const deflection = quotient(
    product(number(5), giv('0.25 kip/ft'), power(giv('21 ft'), 4)),
    product(number(384), giv('29000 ksi'), giv('204 in^4')),
  );

  test('feet cubed become inches by a cube of twelve', () => {
    const converted = withConversion(deflection, unit('in'));
    expect(toLinear(converted)).toMatch(/\(12 in\/ft\)³$/);
    expect(sameUnit(resultUnit(converted)!, unit('in'))).toBe(true);
    // 5 w L⁴/(384 E I) by hand: 5 (0.25) (21)⁴ (12)³ / (384 × 29000 × 204).
    const byHand = (5 * 0.25 * 21 ** 4 * 12 ** 3) / (384 * 29000 * 204);
    expect(evaluate(converted).si / 0.0254).toBeCloseTo(byHand, 12);
  });

  test('pounds become kips by a division, so that the figure is greater than one', () => {
    const strip = withConversion(product(giv('65 psf'), giv('8.5 ft')), unit('kip/ft'));
    expect(toLinear(strip)).toBe('65 psf (8.5 ft) / (1000 lb/kip)');
    expect(toLinear(reduce(strip, { kind: 'figures', count: 4 }))).toBe(
      '0.5525 kip/ft',
    );
  });

  test('the value never changes and the unit is the one asked for', () => {
    const pairs = [
      ['psf', 'kN/m^2'],
      ['kip ft', 'kN m'],
      ['klf', 'lb/in'],
      ['in^4', 'mm^4'],
      ['deg', 'rad'],
      ['kip', 'kip'],
      ['MPa', 'kN/m^2'],
    ] as const;
    for (const [from, to] of pairs) {
      const before = fig(3.7, from);
      const after = withConversion(before, unit(to));
      const whole = evaluate(after).si / evaluate(before).si;
      expect(whole, `${from} to ${to}`).toBeCloseTo(1, 12);
      const { inSi } = resultUnit(after)!;
      expect(inSi / unit(to).inSi, `${from} to ${to}`).toBeCloseTo(1, 14);
    }
  });

  test('a force does not become a length, nor a symbol anything', () => {
    expect(() => withConversion(giv('3 kip'), unit('ft'))).toThrow(RangeError);
    expect(() => withConversion(momentSum, unit('kip ft'))).toThrow(RangeError);
  });

  test('everything strikes but the unit that is left', () => {
    const marked = cancelUnits(withConversion(deflection, unit('in')));
    const left = (part: Figure): number =>
      part.unit.factors.reduce((n, f) => n + Math.abs(f.power), 0) -
      (part.cancelled?.length ?? 0);
    const figures: Figure[] = [];
    const visit = (part: Expression): void => {
      if (part.kind === 'figure') figures.push(part);
      if (part.kind === 'product') part.factors.forEach(visit);
      if (part.kind === 'quotient') [part.over, part.under].forEach(visit);
      if (part.kind === 'power') visit(part.base);
    };
    visit(marked);
    expect(figures.reduce((n, part) => n + left(part), 0)).toBe(1);
  });
});
