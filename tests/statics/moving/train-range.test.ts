import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  breakpointsOf,
  criticalPlace,
  influenceBasis,
  influenceLine,
  rollingTrain,
  solveBeam,
  valueAt,
  type BeamSolution,
  type BeamStructure,
  type Train,
} from '../../../src/statics/index.ts';
import { beam, down, fixed, pin, roller, spread, spring } from '../../support/beam.ts';
import { randomTrain, solverFor, train } from '../../support/rolling.ts';

function solved(structure: BeamStructure, ...trains: readonly Train[]): BeamSolution {
  const outcome = solveBeam({ ...structure, trains });
  if (outcome.kind === 'unsolved') throw new Error(outcome.unsolved.reason);
  return outcome;
}

function simple(length: number): BeamStructure {
  return beam({
    points: { A: 0, B: length },
    supports: { A: pin, B: roller() },
    cases: ['L'],
  });
}

const truck = train([8, 32, 32], [14, 14]);

describe('trainRange', () => {
  // Greatest moments of the 8-32-32 kip truck on simple spans, AASHTO Standard Specifications,
  // appendix A (from memory): 40 ft 449.8, 60 ft 806.5, 80 ft 1164.9 kip ft.
  test.each([
    [40, 449.8],
    [60, 806.5],
    [80, 1164.9],
  ])('finds the published greatest moment of the truck on %d ft', (length, moment) => {
    const { ranges } = solved(simple(length), truck);
    expect(ranges[0]!.extremes.moment.max.value).toBeCloseTo(moment, 1);
  });

  // Hibbeler, Structural Analysis, absolute maximum shear and moment (from memory): midspan halves
  // the distance between the resultant and the wheel next to it.
  test('stands the resultant and the nearest wheel on either side of midspan', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 2, max: 9 }),
        fc.integer({ min: 2, max: 9 }),
        fc.integer({ min: 1, max: 8 }),
        (first, second, gap) => {
          const two = train([first, second], [gap], { travel: 'right' });
          const { ranges } = solved(simple(40), two);
          const { value, x, arrangement } = ranges[0]!.extremes.moment.max;
          const toResultant = (Math.min(first, second) * gap) / (first + second);
          expect(Math.abs(x - 20)).toBeCloseTo(toResultant / 2, 7);
          const total = first + second;
          expect(value).toBeCloseTo((total * (40 - toResultant) ** 2) / (4 * 40), 8);
          expect(arrangement.trains[0]!.axles).toHaveLength(2);
        },
      ),
      { numRuns: 20 },
    );
  });

  test('gives an envelope of exact parabolas on a simple beam', () => {
    const { ranges } = solved(simple(60), truck);
    const { max, min } = ranges[0]!.moment;
    expect(max.pieces.length).toBeLessThan(8);
    for (const { coefficients } of max.pieces)
      expect(coefficients.length).toBeLessThanOrEqual(3);
    expect(min.pieces).toEqual([{ start: 0, end: 60, coefficients: [0] }]);
  });

  const springy: BeamStructure = {
    ...beam({
      points: { A: 0, B: 7, C: 9, D: 16, E: 18 },
      supports: { A: fixed, B: spring(5e5), D: roller() },
      hinges: ['C'],
      cases: ['L'],
    }),
    stiffness: [
      { from: 0, to: 5, EI: 4e6 },
      { from: 5, to: 18, EI: 1e6 },
    ],
  };

  test.each([
    ['a simple beam', simple(18)],
    ['a stepped beam on a spring, hinged, with an overhang', springy],
  ])(
    'is at every station what the exact search finds there, on %s',
    (_, structure) => {
      const basis = influenceBasis(structure, solverFor(structure))!;
      fc.assert(
        fc.property(
          randomTrain(18).filter(({ axles }) => axles.length < 4),
          fc.array(fc.double({ min: 0.01, max: 17.99, noNaN: true }), {
            minLength: 8,
            maxLength: 8,
          }),
          (one, stations) => {
            const range = solved(structure, one).ranges[0]!;
            for (const of of ['shear', 'moment', 'deflection'] as const) {
              const curves = range[of];
              if (curves === undefined) continue;
              for (const sense of ['max', 'min'] as const) {
                const curve = curves[sense];
                const scale = Math.max(
                  ...breakpointsOf(curve).map((x) =>
                    Math.abs(valueAt(curve, x, 'left')),
                  ),
                );
                for (const x of stations) {
                  const line = influenceLine(basis, {
                    kind: 'station',
                    of,
                    x,
                    side: 'right',
                  });
                  const { value } = criticalPlace(rollingTrain(one), line, sense);
                  expect(
                    Math.abs(valueAt(curve, x, 'right') - value),
                  ).toBeLessThanOrEqual(2e-9 * scale + 1e-14);
                }
              }
            }
          },
        ),
        { numRuns: 3 },
      );
    },
    60_000,
  );

  test('adds to static loads, and stands in the state of its case where it bends the beam most', () => {
    const loaded = {
      ...simple(24),
      loads: beam({
        points: { A: 0, B: 24 },
        supports: { A: pin, B: roller() },
        loads: [spread(2, 'A', 'B', { case: 'L' }), down(3, 8, { case: 'L' })],
      }).loads,
    };
    const one = train([2, 10], [4], { travel: 'right' });
    const [alone, together] = [solved(simple(24), one), solved(loaded, one)];
    const fixedPart = solved(loaded).results[0]!;
    const x = 9.7;
    expect(valueAt(together.ranges[0]!.moment.max, x, 'left')).toBeCloseTo(
      valueAt(alone.ranges[0]!.moment.max, x, 'left') +
        valueAt(fixedPart.moment, x, 'left'),
      9,
    );
    const extreme = alone.ranges[0]!.extremes.moment.max;
    expect(alone.results[0]!.extremes.moment.max.value).toBeCloseTo(extreme.value, 9);
    expect(alone.rolled![0]!.standing.map(({ id }) => id)).toEqual(['T 1', 'T 2']);
    expect(together.rolled![0]!.standing).toEqual(alone.rolled![0]!.standing);
  });

  test('takes of trains of one case the one that is worse', () => {
    const light = train([1], [], { id: 'light' });
    const heavy = train([1, 1], [8], { id: 'heavy' });
    const lone = train([1.5], [], { id: 'lone' });
    const { ranges } = solved(simple(10), light, heavy, lone);
    const { moment, shear } = ranges[0]!.extremes;
    // At midspan 1.5 · 10/4 against 10/4 and a little; at the support 1 + 2/10.
    expect(moment.max.arrangement.trains[0]!.id).toBe('lone');
    expect(moment.max.value).toBeCloseTo(3.75, 12);
    expect(shear.max.value).toBeCloseTo(1.5, 12);
  });

  test('reports the greatest and least of reactions with the place of the train', () => {
    const range = solved(
      beam({
        points: { A: 0, B: 10, C: 13 },
        supports: { A: pin, B: roller() },
        cases: ['L'],
      }),
      train([6], []),
    ).ranges[0]!;
    const [a, b] = range.reactions;
    expect(a!.y!.max.value).toBeCloseTo(6, 12);
    expect(a!.y!.min.value).toBeCloseTo(-1.8, 12);
    expect(a!.y!.min.arrangement.trains[0]!.axles).toEqual([{ index: 0, x: 13 }]);
    expect(b!.y!.max.value).toBeCloseTo(7.8, 12);
    expect(a!.x!.max.value).toBe(0);
  });

  test.each([
    [{ axles: [], spacings: [] }],
    [{ axles: [1, -2], spacings: [{ least: 1, greatest: 1 }] }],
    [{ axles: [1, 2], spacings: [] }],
    [{ axles: [1, 2], spacings: [{ least: 3, greatest: 2 }] }],
    [{ axles: [1], spacings: [], lane: -1 }],
    [{ axles: [1], spacings: [], case: 'X' }],
  ])('refuses a train that is none: %j', (part) => {
    expect(() => solved(simple(10), { ...train([1], []), ...part })).toThrow(
      RangeError,
    );
  });
});
