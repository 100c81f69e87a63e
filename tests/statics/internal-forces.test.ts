import { describe, expect, test } from 'vitest';
import { internalForces } from '../../src/statics/internal-forces.ts';
import { loadsUnder } from '../../src/statics/loading.ts';
import {
  beam,
  down,
  right,
  spread,
  spreadRight,
  turn,
  type LoadSketch,
} from '../support/beam.ts';

function forcesOf(loads: readonly LoadSketch[]): ReturnType<typeof internalForces> {
  const structure = beam({ points: { A: 0, C: 10 }, loads });
  return internalForces(structure, [], loadsUnder(structure, 'all'), {
    force: 1,
    moment: 1,
  });
}

describe('internalForces', () => {
  test('leap by a force up, by minus a force right, by minus a couple counterclockwise', () => {
    const { axial, shear, moment } = forcesOf([down(3, 4), right(2, 4), turn(5, 4)]);
    expect(shear.pieces.map(({ coefficients }) => coefficients)).toEqual([[0], [-3]]);
    expect(axial.pieces.map(({ coefficients }) => coefficients)).toEqual([[0], [-2]]);
    expect(moment.pieces.map(({ coefficients }) => coefficients)).toEqual([
      [0],
      [-5, -3],
    ]);
  });

  test('integrate spread loads exactly: one power more in V, two in M', () => {
    const { axial, shear, moment } = forcesOf([
      spread([2, 8], 4, 10),
      spreadRight([3, 3], 4, 10),
    ]);
    expect(shear.pieces[1]!.coefficients).toEqual([0, -2, -0.5]);
    expect(moment.pieces[1]!.coefficients).toEqual([0, 0, -1, -1 / 6]);
    expect(axial.pieces[1]!.coefficients).toEqual([0, -3]);
  });

  test('break only where something acts, all three at the same stations', () => {
    const { axial, shear, moment } = forcesOf([down(1, 2), spread(1, 5, 7)]);
    const breaks = ({ pieces }: typeof shear): readonly number[] =>
      pieces.map(({ end }) => end);
    expect(breaks(shear)).toEqual([2, 5, 7, 10]);
    expect(breaks(axial)).toEqual(breaks(shear));
    expect(breaks(moment)).toEqual(breaks(shear));
  });

  test('see overlapping loads that cancel as no load', () => {
    const { shear } = forcesOf([
      spread([0, 6], 0, 10),
      spread([6, 0], 0, 10),
      spread(-6, 0, 10),
    ]);
    expect(shear.pieces).toEqual([{ start: 0, end: 10, coefficients: [0] }]);
  });

  test('tell what is left beyond the right end, forces there included', () => {
    expect(forcesOf([down(3, 4), turn(2, 10), right(1, 10)]).closing).toEqual({
      axial: -1,
      shear: -3,
      moment: -20,
    });
  });
});
