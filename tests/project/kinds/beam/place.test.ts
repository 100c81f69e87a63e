import { describe, expect, test } from 'vitest';
import { findingsOn, soundBeam } from '../../../support/folder.ts';

const placesOf = (
  at: string,
  points: string = '{ A: 0 m, B: 3 m, C: 9 m }',
): readonly unknown[] =>
  soundBeam({ points, loads: `[ { point: 1 kN, at: ${at} } ]` }).loads.map((load) =>
    load.kind === 'distributed'
      ? undefined
      : [load.at.x, load.at.point, load.at.given?.text],
  );

describe('the place of a load', () => {
  test('is a point by its name, or a station', () => {
    expect(placesOf('B')).toEqual([[3, 'B', undefined]]);
    expect(placesOf('4.5 m')).toEqual([[4.5, undefined, '4.5']]);
  });

  test('is a list of either, each a load of its own', () => {
    expect(placesOf('[ B, 4 m, 500 cm ]')).toEqual([
      [3, 'B', undefined],
      [4, undefined, '4'],
      [5, undefined, '500'],
    ]);
  });

  test('knows the point that a station falls on, and takes its place exactly', () => {
    const foot = soundBeam({
      points: '{ A: 0 ft, B: 6 ft, C: 20 ft }',
      loads: '[ { point: 1 kip, at: 72 in } ]',
    });
    const load = foot.loads[0];
    expect(load).toMatchObject({ at: { point: 'B', given: { text: '72' } } });
    expect(load?.kind === 'point' && load.at.x).toBe(foot.points[1]?.x);
  });

  test('is a name before it is a station', () => {
    expect(placesOf('2', '{ A: 0 m, "2": 3 m, C: 9 m }')).toEqual([
      [3, '2', undefined],
    ]);
  });

  test('may be the very end of the beam, reached by another unit', () => {
    const beam = soundBeam({
      points: '{ A: 0 ft, B: 6 ft, C: 20 ft }',
      loads: '[ { point: 1 kip, at: 240 in } ]',
    });
    expect(beam.loads[0]).toMatchObject({ at: { point: 'C' } });
  });

  test.each([
    ['Q', 'unknown-point 5:29 the beam has no point `Q`'],
    ['Q7', 'unknown-point 5:29 the beam has no point `Q7`'],
    [
      '7',
      'not-a-place 5:29 `7` is neither a point nor a station: 7 has no unit, and a length is wanted',
    ],
    [
      '3 kN',
      'not-a-place 5:29 `3 kN` is neither a point nor a station: 3 kN is a force, not a length',
    ],
    [
      '9.01 m',
      'off-the-member 5:29 the station lies right of the beam, which runs from `A` to `C`',
    ],
  ])('%s is none', (at, finding) => {
    expect(
      findingsOn({
        points: '{ A: 0 m, B: 3 m, C: 9 m }',
        loads: `[ { point: 1 kN, at: ${at} } ]`,
      }),
    ).toContain(finding);
  });
});
