import { describe, expect, test } from 'vitest';
import { soundBeam } from '../../../support/folder.ts';

const reachOf = (
  where: string,
  points: string = '{ A: 0 m, B: 3 m, C: 9 m }',
): unknown => {
  const load = soundBeam({
    points,
    supports: '{ A: fixed }',
    loads: `[ { uniform: 1 kN/m${where} } ]`,
  }).loads[0];
  return (
    load?.kind === 'distributed' && [
      load.start.x,
      load.start.point,
      load.end.x,
      load.end.point,
    ]
  );
};

describe('the stretch of a load', () => {
  test('is the whole beam where nothing is said', () => {
    expect(reachOf('')).toEqual([0, 'A', 9, 'C']);
  });

  test('runs from the beginning, or to the end, where one of them is left out', () => {
    expect(reachOf(', to: B')).toEqual([0, 'A', 3, 'B']);
    expect(reachOf(', from: 1 m')).toEqual([1, undefined, 9, 'C']);
  });

  test('may be named as two points with a dash between', () => {
    expect(reachOf(', span: A-B')).toEqual([0, 'A', 3, 'B']);
    expect(reachOf(', span: B - C')).toEqual([3, 'B', 9, 'C']);
    expect(reachOf(', span: B – C')).toEqual([3, 'B', 9, 'C']);
  });

  test('reads points that hold a dash where that reads one way only', () => {
    expect(
      reachOf(
        ', span: A-1-B',
        '{ A-1: 0 m, B: 3 m, C: 9 m }'.replace('{', '{ A: -1 m,'),
      ),
    ).toEqual([0, 'A-1', 3, 'B']);
  });
});
