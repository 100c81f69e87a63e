import { describe, expect, test } from 'vitest';
import { loadsUnder } from '../../src/statics/loading.ts';
import { beam, down } from '../support/beam.ts';

const structure = beam({
  points: { A: 0, C: 10 },
  loads: [
    down(1, 1, { case: 'D' }),
    down(2, 2, { case: 'L' }),
    down(3, 3, { case: 'D' }),
  ],
  cases: ['D', 'L', 'S'],
});
const ids = (
  loading: Parameters<typeof loadsUnder>[1],
): readonly (readonly [string, number])[] =>
  loadsUnder(structure, loading).map(({ load, factor }) => [load.id, factor]);

describe('loadsUnder', () => {
  test('gives the loads of one case with the factor 1', () => {
    expect(ids('D')).toEqual([
      ['load-1', 1],
      ['load-3', 1],
    ]);
    expect(ids('S')).toEqual([]);
  });

  test('gives the loads of a sum of cases in the order of the structure', () => {
    expect(
      ids([
        { case: 'L', factor: 1.6 },
        { case: 'D', factor: 1.2 },
      ]),
    ).toEqual([
      ['load-1', 1.2],
      ['load-2', 1.6],
      ['load-3', 1.2],
    ]);
  });

  test('counts a case named twice with both factors', () => {
    expect(
      ids([
        { case: 'L', factor: 1 },
        { case: 'L', factor: 0.5 },
      ]),
    ).toEqual([['load-2', 1.5]]);
  });

  test('knows no case but the structure’s, not even one that every object has', () => {
    expect(() => loadsUnder(structure, 'E')).toThrow(RangeError);
    expect(() => loadsUnder(structure, '__proto__')).toThrow(RangeError);
  });
});
