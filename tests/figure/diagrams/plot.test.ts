import { describe, expect, test } from 'vitest';
import { plotScale, valueUnder } from '../../../src/figure/diagrams/plot.ts';
import type { Diagram } from '../../../src/figure/index.ts';
import { stationsBetween } from '../../../src/figure/pictures/stations.ts';
import type { Piecewise } from '../../../src/statics/index.ts';
import { words } from '../../support/pictures.ts';

const stations = stationsBetween({ start: 0, end: 10 }, { left: 0, right: 100 });
const line: Piecewise = { pieces: [{ start: 0, end: 10, coefficients: [30, -10] }] };
const diagram = (positive: 'up' | 'down', of: Piecewise = line): Diagram => ({
  quantity: 'moment',
  title: words('M'),
  curves: [{ of, style: 'solid' }],
  keyValues: [],
  positive,
});

describe('plotScale', () => {
  test('ordinates are in proportion, and the whole range has the height of a diagram', () => {
    const { yOf } = plotScale(diagram('up'), stations);
    expect(yOf(30) / yOf(10)).toBeCloseTo(3, 12);
    expect(yOf(-70) - yOf(30)).toBeGreaterThan(40);
    expect(yOf(-70) - yOf(30)).toBeLessThan(60);
  });

  test('positive values lie on the side asked for', () => {
    expect(plotScale(diagram('up'), stations).yOf(1)).toBeLessThan(0);
    expect(plotScale(diagram('down'), stations).yOf(1)).toBeGreaterThan(0);
  });

  test('a diagram of zeros is its base line', () => {
    const zero: Piecewise = { pieces: [{ start: 0, end: 10, coefficients: [0] }] };
    expect(plotScale(diagram('up', zero), stations).yOf(0)).toBeCloseTo(0, 12);
  });

  test('a diagram of next to nothing is its base line too, and no number that is none', () => {
    const speck: Piecewise = {
      pieces: [{ start: 0, end: 10, coefficients: [-5e-324] }],
    };
    expect(plotScale(diagram('up', speck), stations).yOf(-5e-324)).toBeCloseTo(0, 12);
  });
});

describe('valueUnder', () => {
  const jump: Piecewise = {
    pieces: [
      { start: 0, end: 5, coefficients: [1] },
      { start: 5, end: 10, coefficients: [2] },
    ],
  };
  test('comes from the right at a jump, from the left at the last station', () => {
    expect(valueUnder(jump, 5)).toBe(2);
    expect(valueUnder(jump, 10)).toBe(2);
    expect(valueUnder(jump, 11)).toBeUndefined();
  });
});
