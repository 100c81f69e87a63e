import { describe, expect, test } from 'vitest';
import {
  bracket,
  collectSymbols,
  evaluate,
  minus,
  product,
  quotient,
  number,
  recheck,
  resultUnit,
  sum,
  symbolValues,
  toLinear,
  toSpeech,
  toTex,
  type Expression,
} from '../../src/equation/index.ts';
import { printedRange } from '../../src/equation/printed-range.ts';
import { quantity, unitText } from '../../src/units/index.ts';
import { layOut } from './katex.ts';
import { fig, giv, sym, symbol, unit } from './samples.ts';

const ramp = (exponent: number): Expression =>
  bracket(sum(sym('x'), minus(giv('6 ft'))), exponent);

const at = (feet: number): ReturnType<typeof symbolValues> =>
  symbolValues([[symbol('x'), quantity(feet, unit('ft'))]]);

describe('a singularity function', () => {
  test('is nothing left of its station and a power right of it', () => {
    const square = 0.3048 ** 2;
    expect(evaluate(ramp(2), at(4)).si).toBe(0);
    expect(evaluate(ramp(2), at(9)).si / square).toBeCloseTo(9, 12);
  });

  test('of power 0 is a unit step that counts from its station on', () => {
    expect([5, 6, 7].map((feet) => evaluate(ramp(0), at(feet)).si)).toEqual([0, 1, 1]);
  });

  test('has the unit of its difference raised to its power', () => {
    const of = bracket(giv('15 ft'), 3);
    expect(unitText(resultUnit(of) ?? unit('kip'))).toBe('ft³');
  });

  test('prints in angle brackets for every reader', async () => {
    const term = product(giv('8.4 kip'), ramp(1));
    expect(toLinear(term)).toBe('8.4 kip ⟨x − 6 ft⟩¹');
    expect(toTex(term)).toBe(
      '8.4\\,\\text{kip}\\,\\langle x - 6\\,\\text{ft} \\rangle^{1}',
    );
    expect(toSpeech(ramp(3))).toBe(
      'open angle bracket x minus 6 ft close angle bracket cubed',
    );
    const tall = product(quotient(giv('8.4 kip'), number(6)), ramp(3));
    expect((await layOut(toTex(tall))).warnings).toEqual([]);
  });

  test('gives its symbols to the notation', () => {
    const lines = [{ left: ramp(2), chain: [] }];
    expect(collectSymbols([{ lines }])).toEqual([symbol('x')]);
  });

  test('is worked again from its printed figures, off or on', () => {
    const line = (left: Expression, result: Expression): boolean =>
      recheck({ lines: [{ left, chain: [{ sign: '=', of: result }] }] }).every(
        ({ agrees }) => agrees,
      );
    const on = bracket(sum(giv('21 ft'), minus(giv('6 ft'))), 2);
    const off = bracket(sum(giv('5 ft'), minus(giv('6 ft'))), 2);
    expect(line(on, fig(225, 'ft^2'))).toBe(true);
    expect(line(on, fig(227, 'ft^2'))).toBe(false);
    expect(line(off, fig(0, 'ft^2'))).toBe(true);
    expect(line(off, fig(1, 'ft^2'))).toBe(false);
  });

  test('that may stand on either side of its station as printed is 0 or 1', () => {
    const near = bracket(sum(fig(6.0, 'ft', 2), minus(giv('6 ft'))), 0);
    expect(printedRange(near, new Map()).half).toBe(1);
  });
});
