import { describe, expect, test } from 'vitest';
import { findingsOn, soundBeam } from '../../../support/folder.ts';

const stations = (
  points: string,
  supports: string = '{ A: fixed }',
): readonly (readonly [string, number, boolean])[] =>
  soundBeam({ points, supports }).points.map(({ name, x, relative }) => [
    name,
    x,
    relative,
  ]);

describe('the points of a beam', () => {
  test('stand at stations in metres, whatever their units', () => {
    expect(stations('{ A: 0 ft, B: 10 ft, C: 4 m, D: 4500 mm, E: 200 in }')).toEqual([
      ['A', 0, false],
      ['B', 3.048, false],
      ['C', 4, false],
      ['D', 4.5, false],
      ['E', expect.closeTo(5.08, 12), false],
    ]);
  });

  test('may count from the point before them', () => {
    expect(stations('{ A: 1 m, B: +2 m, C: + 500 mm, D: "+1 m" }')).toEqual([
      ['A', 1, false],
      ['B', 3, true],
      ['C', 3.5, true],
      ['D', 4.5, true],
    ]);
  });

  test('keep how they were written', () => {
    const { points } = soundBeam({
      points: `{ A: -2 ft 6 in, B: 12'-6 1/2", C: +4 ft }`,
      supports: '{ A: fixed }',
    });
    expect(points[0]).toMatchObject({
      x: expect.closeTo(-0.762, 12),
      given: { compound: true },
    });
    expect(points[1]).toMatchObject({
      x: expect.closeTo(3.8227, 12),
      given: { compound: true },
    });
    expect(points[2]).toMatchObject({
      relative: true,
      given: { text: '4', compound: false },
    });
  });

  test('may have the names of grid lines', () => {
    expect(
      stations(
        `{ "2": 0 m, A.5: 3 m, B': 6 m, 3: 9 m, A-1: 12 m }`,
        '{ 2: fixed }',
      ).map(([name]) => name),
    ).toEqual(['2', 'A.5', "B'", '3', 'A-1']);
  });

  test('may begin anywhere, left of the origin too', () => {
    expect(stations('{ A: -3 m, B: 0 m, C: 2 m }').map(([, x]) => x)).toEqual([
      -3, 0, 2,
    ]);
  });

  test('a bare 0 takes the unit of the project', () => {
    expect(
      soundBeam({ points: '{ A: 0, B: 9 m }', supports: '{ A: fixed }' }).points[0]
        ?.given.unit.factors,
    ).toEqual([{ symbol: 'ft', power: 1 }]);
  });

  test('that could not be read do not make every mention of them a mistake', () => {
    const findings = findingsOn({
      points: '{ A: 0 ft, B: 6, C: 20 ft }',
      loads:
        '[ { point: 1 kip, at: B }, { point: 1 kip, at: 30 ft }, { uniform: 1 klf, span: A-B } ]',
    });
    expect(findings).toEqual([
      'unit-missing 3:23 6 has no unit, and a length is wanted',
    ]);
  });

  test('at one station are told from points close by', () => {
    expect(
      findingsOn({
        points: '{ A: 0 m, B: 10 m, C: 10.000000001 m }',
        supports: '{ A: fixed }',
      }),
    ).toEqual(['points-coincide 3:31 points `B` and `C` stand at one station']);
    expect(
      soundBeam({
        points: '{ A: 0 m, B: 10 m, C: 10.0001 m }',
        supports: '{ A: fixed }',
      }).points,
    ).toHaveLength(3);
  });
});
