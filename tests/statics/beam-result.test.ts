import { describe, expect, test } from 'vitest';
import { isClosed } from '../../src/statics/index.ts';
import { beamResult } from '../../src/statics/beam-result.ts';
import { tidyStructure } from '../../src/statics/tidy-structure.ts';
import { beam, fixed, roller, spread } from '../support/beam.ts';

// A propped cantilever, which statics cannot solve: R = 3wL/8, M = −wL²/8 (handbook, from memory).
const propped = tidyStructure(
  beam({
    points: { A: 0, C: 8 },
    supports: { A: fixed, C: roller() },
    loads: [spread(3, 'A', 'C')],
  }),
);
const entry = { mark: 'all', loading: 'all' } as const;

describe('beamResult', () => {
  test('follows from reactions however they were found', () => {
    const result = beamResult(propped, entry, [[0, 15, 24], [9]]);
    expect(result.residuals.every(isClosed)).toBe(true);
    expect(result.extremes.moment.min).toEqual({ value: -24, x: 0 });
    expect(result.extremes.moment.max).toEqual({
      value: expect.closeTo((9 * 3 * 64) / 128, 10),
      x: 5,
    });
    expect(result.reactions[0]).toEqual({
      point: 'A',
      x: 0,
      y: 15,
      moment: 24,
      components: [0, 15, 24],
    });
  });

  test('leaves sums open where the reactions do not balance the loads', () => {
    const openOf = (components: readonly (readonly number[])[]): readonly string[] =>
      beamResult(propped, entry, components)
        .residuals.filter((residual) => !isClosed(residual))
        .map(({ equation }) => equation);
    expect(openOf([[0, 15, 24], [10]])).toEqual([
      'forces y',
      'moments about A',
      'closing shear',
    ]);
    expect(openOf([[0, 15, 25], [9]])).toEqual([
      'moments about A',
      'moments about C',
      'closing moment',
    ]);
    expect(openOf([[1, 15, 24], [9]])).toEqual(['forces x', 'closing axial']);
  });
});
