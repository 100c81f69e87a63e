import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  influenceBasis,
  influenceLine,
  solverOf,
  valueAt,
  type BeamStructure,
  type Effect,
  type InfluenceBasis,
} from '../../../src/statics/index.ts';
import { beam, fixed, pin, roller, spring } from '../../support/beam.ts';
import { determinateBeam } from '../../support/random-beam.ts';
import { solverFor } from '../../support/rolling.ts';

function basisOf(structure: BeamStructure): InfluenceBasis {
  const basis = influenceBasis(structure, solverFor(structure));
  if (basis === undefined) throw new Error('the ways disagree');
  return basis;
}

/** What a load of 1 at a place gives, solved directly. */
function solvedDirectly(structure: BeamStructure, effect: Effect, at: number): number {
  const outcome = solverOf(structure);
  if (outcome.kind !== 'solver') throw new Error('not solved');
  const load = { id: 'P', case: 'all', kind: 'point', x: at, fx: 0, fy: -1 } as const;
  const state = outcome.state('all', [load]);
  if (state.kind !== 'state') throw new Error('not solved');
  const { result } = state;
  if (effect.kind === 'reaction') {
    const found = result.reactions.find(({ point }) => point === effect.point)!;
    return found[effect.component]!;
  }
  const curve =
    effect.of === 'slope' || effect.of === 'deflection'
      ? result.displacement![effect.of]
      : result[effect.of];
  return valueAt(curve, effect.x, effect.side);
}

const simple = beam({ points: { A: 0, B: 10 }, supports: { A: pin, B: roller() } });

describe('influenceLine', () => {
  test('gives straight lines for the reactions of a simple beam', () => {
    const line = influenceLine(basisOf(simple), {
      kind: 'reaction',
      point: 'A',
      component: 'y',
    });
    expect(line.pieces).toEqual([{ start: 0, end: 10, coefficients: [1, -0.1] }]);
  });

  test('leaps by the load itself in the line for shear, and peaks in that for moment', () => {
    const basis = basisOf(simple);
    const at = { kind: 'station', x: 4, side: 'right' } as const;
    const shear = influenceLine(basis, { ...at, of: 'shear' });
    expect(valueAt(shear, 4, 'left')).toBeCloseTo(-0.4, 14);
    expect(valueAt(shear, 4, 'right')).toBeCloseTo(0.6, 14);
    const moment = influenceLine(basis, { ...at, of: 'moment' });
    expect(valueAt(moment, 4, 'left')).toBeCloseTo((4 * 6) / 10, 14);
  });

  // Two equal spans: M over the middle support = −(P a b (L + a) / 4 L²), three-moment equation (from memory).
  test('gives the textbook ordinates of two equal spans', () => {
    const L = 8;
    const two = beam({
      points: { A: 0, B: L, C: 2 * L },
      supports: { A: pin, B: roller(), C: roller() },
    });
    const basis = basisOf(two);
    const hogging = influenceLine(basis, {
      kind: 'station',
      of: 'moment',
      x: L,
      side: 'left',
    });
    const middle = influenceLine(basis, {
      kind: 'reaction',
      point: 'B',
      component: 'y',
    });
    for (const a of [0.5, 2, 3.3, 4, 7]) {
      const expected = (-a * (L - a) * (L + a)) / (4 * L * L);
      expect(valueAt(hogging, a, 'left')).toBeCloseTo(expected, 12);
      expect(valueAt(hogging, 2 * L - a, 'left')).toBeCloseTo(expected, 12);
      // R_B = a/L − 2 M_B/L, by moments about A and C.
      expect(valueAt(middle, a, 'left')).toBeCloseTo((a - 2 * expected) / L, 12);
    }
    // The greatest ordinate stands at a = L/√3 and is 0.0962 L.
    expect(valueAt(hogging, L / Math.sqrt(3), 'left')).toBeCloseTo(
      -L / 6 / Math.sqrt(3),
      12,
    );
  });

  test('agrees with loads solved one by one on beams of every kind', () => {
    const stepped: BeamStructure = {
      ...beam({
        points: { A: 0, B: 6, C: 9, D: 14, E: 16 },
        supports: { A: fixed, B: spring(3e4), D: roller(70), E: roller() },
        hinges: ['C'],
      }),
      stiffness: [
        { from: 0, to: 2, EI: 4e4 },
        { from: 2, to: 10.5, EI: 1e5 },
        { from: 10.5, to: 16, EI: 2e4 },
      ],
    };
    const basis = basisOf(stepped);
    fc.assert(
      fc.property(
        fc.integer({ min: 0, max: 16 * 37 }).map((n) => n / 37),
        fc.integer({ min: 0, max: 16 * 41 }).map((n) => n / 41),
        fc.constantFrom('axial', 'shear', 'moment', 'slope', 'deflection'),
        fc.constantFrom('left', 'right'),
        (x, at, of, side) => {
          fc.pre(Math.abs(x - at) > 1e-6);
          const effect = { kind: 'station', of, x, side } as const;
          const direct = solvedDirectly(stepped, effect, at);
          const size = of === 'slope' || of === 'deflection' ? 1e-4 : 1;
          const found = valueAt(influenceLine(basis, effect), at, 'left');
          expect(Math.abs(found - direct)).toBeLessThan(1e-10 * size);
        },
      ),
    );
    for (const [point, component] of [
      ['A', 'y'],
      ['A', 'moment'],
      ['B', 'y'],
      ['D', 'x'],
      ['E', 'y'],
    ] as const) {
      const effect = { kind: 'reaction', point, component } as const;
      for (const at of [0, 1, 2, 5, 9, 9.5, 12, 15, 16]) {
        expect(valueAt(influenceLine(basis, effect), at, 'left')).toBeCloseTo(
          solvedDirectly(stepped, effect, at),
          11,
        );
      }
    }
  });

  test('agrees with loads solved one by one on random determinate beams', () => {
    fc.assert(
      fc.property(
        determinateBeam,
        fc.double({ min: 0, max: 1, noNaN: true }),
        fc.double({ min: 0, max: 1, noNaN: true }),
        (structure, a, b) => {
          const [first, last] = [structure.points[0]!.x, structure.points.at(-1)!.x];
          const [x, at] = [first + a * (last - first), first + b * (last - first)];
          fc.pre(Math.abs(a - b) > 1e-6);
          for (const of of ['shear', 'moment'] as const) {
            const effect = { kind: 'station', of, x, side: 'left' } as const;
            const direct = solvedDirectly(structure, effect, at);
            const found = valueAt(
              influenceLine(basisOf(structure), effect),
              at,
              'left',
            );
            expect(Math.abs(found - direct)).toBeLessThan(
              1e-9 * Math.max(1, last - first, Math.abs(direct)),
            );
          }
        },
      ),
    );
  });

  test('refuses a component that the support does not give', () => {
    expect(() =>
      influenceLine(basisOf(simple), { kind: 'reaction', point: 'B', component: 'x' }),
    ).toThrow(RangeError);
    expect(() =>
      influenceLine(basisOf(simple), {
        kind: 'station',
        of: 'shear',
        x: 11,
        side: 'left',
      }),
    ).toThrow(RangeError);
  });
});
