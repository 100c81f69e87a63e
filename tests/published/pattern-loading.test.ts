import { describe, expect, test } from 'vitest';
import { solveBeam, valueAt, type RangeResult } from '../../src/statics/index.ts';
import { beam, pin, roller, spread } from '../support/beam.ts';
import { patterned } from '../support/patterned.ts';

/** The range of equal spans on simple supports under a uniform load that may stand on any of them. */
function rangeOf(count: number, length: number, load: number): RangeResult {
  const names = Array.from({ length: count + 1 }, (_, index) => `P${index}`);
  const structure = beam({
    points: Object.fromEntries(names.map((name, index) => [name, index * length])),
    supports: Object.fromEntries(
      names.map((name, index) => [name, index === 0 ? pin : roller()]),
    ),
    loads: [spread(load, 0, count * length)],
  });
  const outcome = solveBeam(patterned(structure, 'all'));
  if (outcome.kind === 'unsolved') throw new Error(outcome.unsolved.reason);
  return outcome.ranges[0]!;
}

const on = (range: RangeResult['extremes']['moment']['max']): readonly boolean[] =>
  range.arrangement.choices.map(({ option }) => option === 'on');

/**
 * Two equal spans: piping-designer.com, "Two span continuous beam, equal spans, uniformly distributed
 * load" for both loaded (3/8, 10/8, wL²/8); one span alone (7/16, wL²/16, 49/512 wL²) from the handbooks, from memory.
 */
describe('two spans of 6 m under 16 kN/m, each loaded or not', () => {
  const { reactions, shear, moment, extremes } = rangeOf(2, 6, 16);
  const [w, l] = [16, 6];

  test('ask most of the middle with both loaded', () => {
    expect(reactions[1]!.y!.max.value).toBeCloseTo(120, 9);
    expect(extremes.moment.min).toMatchObject({
      value: expect.closeTo(-72, 9) as number,
      x: 6,
    });
    expect(on(extremes.moment.min)).toEqual([true, true]);
    expect(valueAt(shear.max, 6, 'right')).toBeCloseTo(60, 9);
  });

  test('ask most of a span and of its end with the other empty', () => {
    expect(reactions[0]!.y!.max.value).toBeCloseTo((7 / 16) * w * l, 9);
    expect(extremes.moment.max.value).toBeCloseTo((49 / 512) * w * l ** 2, 9);
    expect(extremes.moment.max.x).toBeCloseTo((7 / 16) * l, 9);
    expect(on(extremes.moment.max)).toEqual([true, false]);
  });

  test('lift the far end with one alone, and hog in its span', () => {
    expect(reactions[2]!.y!.min.value).toBeCloseTo((-1 / 16) * w * l, 9);
    expect(valueAt(moment.min, 9, 'left')).toBeCloseTo((-1 / 32) * w * l ** 2, 9);
  });
});

/** Three equal spans: handbook coefficients, from memory; the middle alone also by MATHalino 822 with α = β = 1. */
describe('three spans of 5 m under 20 kN/m, each loaded or not', () => {
  const { reactions, extremes, moment } = rangeOf(3, 5, 20);
  const [w, l] = [20, 5];

  test('have the greatest moment in an end span with both ends loaded: 0.1013 wL²', () => {
    expect(extremes.moment.max.value).toBeCloseTo(50.6, 1);
    expect(extremes.moment.max.value / (w * l ** 2)).toBeCloseTo(0.1013, 4);
    expect(extremes.moment.max.x).toBeCloseTo(0.45 * l, 9);
    expect(on(extremes.moment.max)).toEqual([true, false, true]);
    expect(reactions[0]!.y!.max.value).toBeCloseTo(45, 9);
  });

  test('have the greatest moment of the middle span with it alone: 0.075 wL²', () => {
    expect(valueAt(moment.max, 7.5, 'left')).toBeCloseTo(37.5, 9);
    expect(reactions[0]!.y!.min.value).toBeCloseTo(-0.05 * w * l, 9);
  });

  test('have the least moment over a support with the spans beside it loaded: −0.1167 wL²', () => {
    // −0.050 wL² from the middle span alone, −(4/15)/4 wL² from the end span beside it.
    expect(extremes.moment.min.value / (w * l ** 2)).toBeCloseTo(-7 / 60, 9);
    expect(on(extremes.moment.min)).toEqual([true, true, false]);
    expect(extremes.moment.min.x).toBe(5);
  });

  test('press most on an inner support with the spans beside it loaded: 1.2 wL', () => {
    expect(reactions[1]!.y!.max.value).toBeCloseTo(1.2 * w * l, 9);
    expect(reactions[1]!.y!.min.value).toBeCloseTo(-0.1 * w * l, 9);
  });
});
