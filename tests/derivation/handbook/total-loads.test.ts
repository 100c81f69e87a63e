import { describe, expect, test } from 'vitest';
import { totalLoads } from '../../../src/derivation/handbook/total-loads.ts';
import {
  beam,
  down,
  pin,
  right,
  roller,
  spread,
  turn,
  type LoadSketch,
} from '../../support/beam.ts';

const totals = (...loads: readonly LoadSketch[]) =>
  totalLoads(
    beam({
      points: { A: 2, B: 12 },
      supports: { A: pin, B: roller() },
      loads,
      cases: ['all'],
    }),
    'all',
  );

const shape = (...loads: readonly LoadSketch[]) =>
  totals(...loads)?.stretches.map(({ from, to, start, end }) => [
    from,
    to,
    start.si,
    end.si,
  ]);

describe('totalLoads', () => {
  test('joins neighbours that make one straight line, stations from the first point', () => {
    expect(shape(spread(4, 2, 7), spread(4, 7, 12))).toEqual([[0, 10, 4, 4]]);
    expect(shape(spread([0, 4], 2, 6), spread([4, 10], 6, 12))).toEqual([
      [0, 10, 0, 10],
    ]);
    expect(shape(spread([0, 4], 2, 6), spread([4, 9], 6, 12))).toHaveLength(2);
    expect(shape(spread(4, 2, 6), spread(4, 7, 12))).toHaveLength(2);
  });

  test('adds up what lies on the same stretch, and keeps which loads it is the sum of', () => {
    expect(shape(spread(4, 2, 12), spread(1, 5, 8))).toEqual([
      [0, 3, 4, 4],
      [3, 6, 5, 5],
      [6, 10, 4, 4],
    ]);
    const [first] = totals(spread(4, 2, 12), spread(1.5, 2, 12))!.stretches;
    expect(first?.start).toEqual({
      si: 5.5,
      terms: [
        { id: 'load-1', si: 4 },
        { id: 'load-2', si: 1.5 },
      ],
    });
  });

  test('loses what cancels', () => {
    expect(shape(spread(4, 2, 12), spread(-4, 2, 12))).toEqual([]);
    expect(totals(down(3, 5), down(-3, 5))?.points).toEqual([]);
    expect(totals(turn(3, 5), turn(-3, 5))?.couples).toEqual([]);
  });

  test('gathers forces and couples that stand at one place, in order', () => {
    const { points, couples } = totals(down(3, 9), down(2, 4), down(1, 9), turn(5, 6))!;
    expect(points.map(({ at, amount }) => [at, amount.si])).toEqual([
      [2, 2],
      [7, 4],
    ]);
    expect(couples.map(({ at, amount }) => [at, amount.si])).toEqual([[4, 5]]);
  });

  test('is nothing that tables know where a load acts along the beam', () => {
    expect(totals(down(3, 5), right(1, 5))).toBeUndefined();
  });

  test('looks at one case alone', () => {
    const structure = beam({
      points: { A: 0, B: 10 },
      supports: { A: pin, B: roller() },
      loads: [spread(4, 0, 10, { case: 'D' }), right(2, 3, { case: 'L' })],
    });
    expect(totalLoads(structure, 'D')?.stretches).toHaveLength(1);
    expect(totalLoads(structure, 'L')).toBeUndefined();
  });
});
