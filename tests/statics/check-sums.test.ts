import { describe, expect, test } from 'vitest';
import {
  solveBeam,
  solvingOrder,
  sumsOfStep,
  superpose,
  termsOfSum,
  valueOfUnknown,
  type BeamResult,
  type SumTerm,
} from '../../src/statics/index.ts';
import { beam, down, fixed, pin, roller, spread } from '../support/beam.ts';

const hung = beam({
  points: { A: 0, B: 6, H: 8, M: 10, C: 12 },
  supports: { A: pin, B: roller(), C: roller() },
  hinges: ['H'],
  loads: [spread([1, 3], 2, 11, { case: 'D' }), down(5, 'M', { case: 'L' })],
});

function worth(terms: readonly SumTerm[], result: BeamResult): number {
  return terms.reduce(
    (sum, { factor, magnitude, source }) =>
      sum +
      factor * (source.kind === 'load' ? magnitude! : valueOfUnknown(result, source)),
    0,
  );
}

describe('checkSums', () => {
  test('are sums that no step has used', () => {
    const { steps, checks } = solvingOrder(hung);
    const used = steps
      .flatMap(sumsOfStep)
      .map(({ part, sum }) => JSON.stringify([part, sum]));
    for (const { part, sum } of checks)
      expect(used).not.toContain(JSON.stringify([part, sum]));
  });

  test('take moments about a support that is left before any other point', () => {
    const { checks } = solvingOrder(hung);
    expect(
      checks.map(({ sum }) => (sum.kind === 'moments' ? sum.about : sum.along)),
    ).toEqual([0, 'x', 'y', 6, 12]);
  });

  test('take the point farthest from the one used where no support is left', () => {
    const wall = beam({ points: { A: 0, B: 2, C: 5 }, supports: { A: fixed } });
    expect(solvingOrder(wall).checks.map(({ sum }) => sum)).toEqual([
      { kind: 'moments', about: 5 },
    ]);
  });

  test('tell which unknowns drop out of them', () => {
    const [first] = solvingOrder(hung).checks;
    expect(first).toMatchObject({
      clears: [
        { point: 'A', index: 0 },
        { point: 'A', index: 1 },
      ],
      uses: [{ point: 'B' }, { point: 'C' }],
    });
  });

  test('close under a combination, with the superposed result and the factored loads', () => {
    const outcome = solveBeam(hung);
    const results = outcome.kind === 'beam' ? outcome.results : [];
    const factors = [
      { case: 'D', factor: 1.2 },
      { case: 'L', factor: 1.6 },
    ];
    const sum = superpose(results, factors, '1.2D + 1.6L');
    for (const check of solvingOrder(hung).checks) {
      const terms = termsOfSum(hung, factors, check.part, check.sum);
      expect(worth(terms, sum)).toBeCloseTo(0, 9);
    }
  });
});
