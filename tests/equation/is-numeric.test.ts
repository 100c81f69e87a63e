import { describe, expect, test } from 'vitest';
import {
  integral,
  name,
  product,
  sumOfForces,
  symbolValues,
} from '../../src/equation/index.ts';
import { isNumeric } from '../../src/equation/is-numeric.ts';
import { quantity } from '../../src/units/index.ts';
import { giv, momentSum, symbol, unit } from './samples.ts';

describe('whether an expression has a value', () => {
  test('figures have, unknown symbols and headings have not', () => {
    expect(isNumeric(product(giv('2 kip'), giv('3 ft')), new Map())).toBe(true);
    expect(isNumeric(momentSum, new Map())).toBe(false);
    expect(isNumeric(sumOfForces('up'), new Map())).toBe(false);
  });

  test('a known symbol has, and the variable of an integral inside it', () => {
    const values = symbolValues([[symbol('R', 'C'), quantity(2, unit('kip'))]]);
    expect(isNumeric(momentSum, values)).toBe(true);
    const x = symbol('x');
    const limits = { variable: x, from: giv('0 ft'), to: giv('2 ft') };
    expect(isNumeric(integral(name(x), limits), new Map())).toBe(true);
    expect(isNumeric(integral(name(x), { ...limits, to: name(x) }), new Map())).toBe(
      false,
    );
  });
});
