import { describe, expect, test } from 'vitest';
import {
  areaUnder,
  differentiate,
  integrate,
  valueAt,
  type Piecewise,
} from '../../../src/statics/index.ts';

// Shear of a simple beam of 10 with 12 at 4: +7.2, then −4.8.
const shear: Piecewise = {
  pieces: [
    { start: 0, end: 4, coefficients: [7.2] },
    { start: 4, end: 10, coefficients: [-4.8] },
  ],
};

describe('integrate', () => {
  test('runs on without a leap where the function has one', () => {
    const moment = integrate(shear);
    expect(valueAt(moment, 4, 'left')).toBeCloseTo(28.8, 12);
    expect(valueAt(moment, 4, 'right')).toBeCloseTo(28.8, 12);
    expect(valueAt(moment, 10, 'left')).toBeCloseTo(0, 12);
  });

  test('starts from the constant given', () => {
    expect(valueAt(integrate(shear, 5), 0, 'right')).toBe(5);
  });
});

describe('differentiate', () => {
  test('gives back what was integrated', () => {
    expect(differentiate(integrate(shear, 3)).pieces).toEqual(shear.pieces);
  });
});

describe('areaUnder', () => {
  test('counts what lies below zero negative', () => {
    expect(areaUnder(shear, 0, 10)).toBeCloseTo(0, 12);
    expect(areaUnder(shear, 0, 4)).toBeCloseTo(28.8, 12);
  });

  test('takes part of a piece, and across a jump', () => {
    expect(areaUnder(shear, 3, 5)).toBeCloseTo(7.2 - 4.8, 12);
    expect(areaUnder(shear, 6, 6)).toBe(0);
  });
});
