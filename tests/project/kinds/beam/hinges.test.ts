import { expect, test } from 'vitest';
import { soundBeam } from '../../../support/folder.ts';

test('hinges stand from left to right with their stations, at a pin or a roller inside the beam too', () => {
  const beam = soundBeam({
    points: '{ A: 0 m, B: 3 m, C: 6 m, D: 9 m }',
    supports: '{ A: fixed, B: roller, D: roller }',
    hinges: '[ C, B ]',
  });
  expect(beam.hinges).toMatchObject([
    { point: 'B', x: 3 },
    { point: 'C', x: 6 },
  ]);
});
