import { describe, expect, test } from 'vitest';
import { idealiseLoad } from '../../../src/project/idealise/idealise-load.ts';
import { soundBeam } from '../../support/folder.ts';

const si = 'project: { title: Weir }\nunits: si\n';
const one = (line: string): unknown => {
  const load = soundBeam(
    {
      points: '{ A: 1 m, B: 3 m, C: 9 m }',
      supports: '{ A: fixed, C: roller }',
      hinges: '[ B ]',
      loads: `[ ${line} ]`,
    },
    { 'project.yaml': si },
  ).loads[0];
  if (load === undefined) throw new Error('no load');
  return idealiseLoad(load);
};

describe('a load as numbers', () => {
  test.each([
    ['down', 0, -5000],
    ['up', 0, 5000],
    ['left', -5000, 0],
    ['right', 5000, 0],
    ['300 deg', expect.closeTo(2500, 6), expect.closeTo(-4330.127, 3)],
  ])('a force that points %s', (direction, fx, fy) => {
    const load = one(`{ case: L, point: 5 kN, at: 4 m, direction: ${direction} }`);
    expect(load).toMatchObject({ id: 'load-0001', case: 'L', kind: 'point', x: 4 });
    // −0 and 0 are one force.
    const { fx: alongX, fy: alongY } = load as { fx: number; fy: number };
    expect({ fx: alongX + 0, fy: alongY + 0 }).toEqual({ fx, fy });
  });

  test('a factor is applied', () => {
    expect(
      one('{ case: L, point: 5 kN, at: 4 m, times: 0.8, because: reduction }'),
    ).toMatchObject({ fy: -4000 });
  });

  test('a load over a length runs from its first size to its second', () => {
    expect(
      one('{ case: L, varying: [ 2 kN/m, -1 kN/m ], from: A, to: B }'),
    ).toMatchObject({
      kind: 'distributed',
      from: 1,
      to: 3,
      y1: -2000,
      y2: 1000,
    });
  });

  test('per projection counts only the length square to the load', () => {
    expect(one('{ case: S, uniform: 2 kN/m, per: projection }')).toMatchObject({
      y1: -2000,
    });
    // At 300° a metre of beam shows sin 60° = 0.866 m, and 0.866 of the force points down.
    expect(
      one('{ case: S, uniform: 2 kN/m, direction: 300 deg, per: projection }'),
    ).toMatchObject({
      x1: expect.closeTo(2000 * 0.8660254 * 0.5, 3),
      y1: expect.closeTo(-2000 * 0.75, 6),
    });
    expect(one('{ case: S, uniform: 2 kN/m, direction: 300 deg }')).toMatchObject({
      y1: expect.closeTo(-1732.0508, 3),
    });
  });

  test('a couple counts counterclockwise positive and keeps its side', () => {
    expect(
      one('{ case: L, couple: 9 kN m, at: B, turn: clockwise, side: right }'),
    ).toEqual({
      id: 'load-0001',
      case: 'L',
      kind: 'couple',
      x: 3,
      m: -9000,
      side: 'right',
    });
    expect(
      one('{ case: L, couple: 9 kN m, at: 4 m, turn: counterclockwise }'),
    ).toMatchObject({ m: 9000 });
  });

  test('of no size is left out', () => {
    expect(one('{ case: L, point: 0 kN, at: 4 m }')).toBeUndefined();
    expect(
      one('{ case: L, uniform: 1 kN/m, times: 0, because: none }'),
    ).toBeUndefined();
    expect(
      one('{ case: L, uniform: 1 kN/m, direction: right, per: projection }'),
    ).toBeUndefined();
    expect(one('{ case: L, varying: [ 0 kN/m, 1 kN/m ] }')).toMatchObject({
      y2: -1000,
    });
  });
});
