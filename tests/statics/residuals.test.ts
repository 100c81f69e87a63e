import { describe, expect, test } from 'vitest';
import { isClosed, solveBeam } from '../../src/statics/index.ts';
import { residualsOf } from '../../src/statics/residuals.ts';
import { tidyStructure } from '../../src/statics/tidy-structure.ts';
import { beam, down, pin, roller, spread } from '../support/beam.ts';

const structure = beam({
  points: { A: 0, B: 4, H: 6, C: 10 },
  supports: { A: pin, B: roller(), C: roller() },
  hinges: ['H'],
  loads: [down(8, 8), spread([1, 5], 'A', 'C')],
});
const outcome = solveBeam(structure);
const [result] = outcome.kind === 'beam' ? outcome.results : [];

describe('residualsOf', () => {
  test('names both force sums, moments about every point, the part right of each hinge, and the closings', () => {
    expect(result!.residuals.map(({ equation }) => equation)).toEqual([
      'forces x',
      'forces y',
      'moments about A',
      'moments about B',
      'moments about H',
      'moments about C',
      'moments about H, right part',
      'closing axial',
      'closing shear',
      'closing moment',
    ]);
  });

  test('judges each sum by the sizes of its own terms', () => {
    const up = result!.residuals.find(({ equation }) => equation === 'forces y')!;
    const held = result!.reactions.reduce((sum, { y }) => sum + Math.abs(y ?? 0), 0);
    expect(up.scale).toBeCloseTo(held + 8 + 30, 9);
    expect(result!.residuals.every(isClosed)).toBe(true);
  });

  test('stays open where a reaction is a little off, in the sums that feel it', () => {
    const reactions = result!.reactions.map((reaction) =>
      reaction.point === 'C'
        ? { ...reaction, components: [reaction.components[0]! * 1.0001] }
        : reaction,
    );
    const { hingeForces } = result!;
    const open = residualsOf(tidyStructure(structure), 'all', {
      reactions,
      hingeForces,
    }).filter((residual) => !isClosed(residual));
    expect(open.map(({ equation }) => equation)).toEqual([
      'forces y',
      'moments about A',
      'moments about B',
      'moments about H',
      'moments about H, right part',
    ]);
  });
});

describe('isClosed', () => {
  test('holds no sum for closed that is no number', () => {
    expect(isClosed({ equation: 'forces x', residual: NaN, scale: 1 })).toBe(false);
    expect(isClosed({ equation: 'forces x', residual: 0, scale: NaN })).toBe(false);
    expect(isClosed({ equation: 'forces x', residual: 0, scale: 0 })).toBe(true);
    expect(isClosed({ equation: 'forces x', residual: 1e-6, scale: 1 })).toBe(false);
  });
});
