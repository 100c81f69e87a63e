import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { CaseContext } from '../../../src/derivation/case-context.ts';
import { displacementChecks } from '../../../src/derivation/sense-checks/displacement-checks.ts';
import { combine, type Piecewise } from '../../../src/statics/index.ts';
import { bendingBeam, contextsOf } from '../../support/bending-beam.ts';
import { claimed, derivedBeam } from '../../support/derived.ts';

const wrongOf = (context: CaseContext): readonly string[] =>
  displacementChecks(context).flatMap(({ holds, finding }) => (holds ? [] : [finding]));

describe('the checks of the elastic curve', () => {
  test('hold for any beam that the solver solves', () => {
    fc.assert(
      fc.property(bendingBeam, (structure) => {
        for (const context of contextsOf(structure))
          expect(wrongOf(context)).toEqual([]);
      }),
      { numRuns: 60 },
    );
  });

  const { project, work } = derivedBeam({
    points: '{ A: 0 ft, B: 6 ft, C: 21 ft }',
    supports: '{ A: pin, C: roller }',
    loads: '[ { point: 8.4 kip, at: B } ]',
    material: '{ E: 29000 ksi }',
    section: '{ I: 204 in^4 }',
  });
  const result = work.solution.results[0]!;
  const right = result.displacement!;

  const withCurve = (deflection: Piecewise, slope: Piecewise): CaseContext =>
    claimed(project, work, {
      ...result,
      displacement: { ...right, deflection, slope },
    });

  test('find a curve that bends too much, and one that leaves its supports', () => {
    const more = (f: Piecewise): Piecewise => combine([{ factor: 1.0001, f }]);
    expect(
      wrongOf(withCurve(more(right.deflection), more(right.slope))),
    ).toContainEqual(expect.stringContaining('does not bend as its moments ask'));
    const lifted: Piecewise = {
      pieces: right.deflection.pieces.map((piece) => ({
        ...piece,
        coefficients: piece.coefficients.map((c, i) => (i === 0 ? c + 1e-6 : c)),
      })),
    };
    expect(wrongOf(withCurve(lifted, right.slope))).toContainEqual(
      expect.stringContaining('the deflection at A'),
    );
  });

  test('find a wrong extreme by integration and by virtual work', () => {
    const { min } = right.extremes;
    const extremes = {
      ...right.extremes,
      min: { ...min, value: min.value * 1.000001 },
    };
    const found = wrongOf(
      claimed(project, work, { ...result, displacement: { ...right, extremes } }),
    );
    expect(found).toContainEqual(expect.stringContaining('integration gives'));
    expect(found).toContainEqual(expect.stringContaining('virtual work gives'));
  });
});
