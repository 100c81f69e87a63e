import { describe, expect, test } from 'vitest';
import { figuresIn } from '../../src/results/figures-in.ts';

const us = figuresIn('us');
const si = figuresIn('si');

describe('figuresIn', () => {
  test('counts in the display units of a system, with units as text', () => {
    expect(us(44482.216152605, 'force')).toEqual({ value: 10, unit: 'kip' });
    expect(si(12500, 'moment')).toEqual({ value: 12.5, unit: 'kN m' });
    expect(si(0.0125, 'deflection')).toEqual({ value: 12.5, unit: 'mm' });
    expect(us(0.02, 'angle')).toEqual({ value: 0.02, unit: 'rad' });
  });

  test('does not let the conversion’s last digit show', () => {
    expect(0.9 / 0.3048 / (1 / 0.3048)).not.toBe(0.9);
    for (const feet of [0.1, 0.7, 2.3, 21, 1234.5]) {
      expect(us(feet * 0.3048, 'length').value).toBe(feet);
    }
  });

  test('keeps all the digits that a double holds for certain', () => {
    expect(si(1000 / 3, 'force').value).toBe(0.333333333333333);
  });

  test('writes zero without a sign', () => {
    expect(Object.is(si(-0, 'force').value, 0)).toBe(true);
  });

  test.each([Number.NaN, Infinity, -Infinity])('refuses %s', (value) => {
    expect(() => si(value, 'moment')).toThrow(RangeError);
  });
});
