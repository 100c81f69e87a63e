import { describe, expect, test } from 'vitest';
import { keyStations, solveBeam } from '../../src/statics/index.ts';
import { beam, down, pin, roller, turn } from '../support/beam.ts';

const structure = beam({
  points: { A: 0, B: 6, C: 10 },
  supports: { A: pin, C: roller() },
  loads: [down(10, 4), turn(-20, 'C')],
});
const outcome = solveBeam(structure);
const stations =
  outcome.kind === 'beam' ? keyStations(structure, outcome.results[0]!) : [];

describe('keyStations', () => {
  test('stand where something acts and at every named point, with names where there are any', () => {
    expect(stations.map(({ x, point }) => [x, point])).toEqual([
      [0, 'A'],
      [4, undefined],
      [6, 'B'],
      [10, 'C'],
    ]);
  });

  test('tell both sides, and start and end at 0 outside the beam', () => {
    // R_A = 6 − 2 = 4 up, R_C = 6 up; the clockwise couple at C leaves M = −20 + … closing to 0.
    expect(stations.map(({ shear }) => [shear.left, shear.right])).toEqual([
      [0, expect.closeTo(4, 12)],
      [expect.closeTo(4, 12), expect.closeTo(-6, 12)],
      [expect.closeTo(-6, 12), expect.closeTo(-6, 12)],
      [expect.closeTo(-6, 12), 0],
    ]);
    expect(stations.map(({ moment }) => [moment.left, moment.right])).toEqual([
      [0, 0],
      [expect.closeTo(16, 12), expect.closeTo(16, 12)],
      [expect.closeTo(4, 12), expect.closeTo(4, 12)],
      [expect.closeTo(-20, 12), 0],
    ]);
  });
});
