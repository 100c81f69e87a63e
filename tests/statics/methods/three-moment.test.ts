import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  momentDistribution,
  solveBeam,
  threeMoment,
  type BeamStructure,
} from '../../../src/statics/index.ts';
import { continuous, down, spread } from './continuous.ts';
import { anyContinuous } from './any-continuous.ts';

const verticals = (structure: BeamStructure): readonly number[] =>
  threeMoment(structure, 'L').components.map((list, index) => {
    const { restraints } = structure.supports[index] ?? { restraints: [] };
    const at = restraints.findIndex((r) => r.kind === 'force' && r.direction[1] === 1);
    return list[at] ?? Number.NaN;
  });

const close = (found: readonly number[], expected: readonly number[]): void => {
  expect(found).toHaveLength(expected.length);
  found.forEach((value, index) => {
    expect(value).toBeCloseTo(expected[index] ?? Number.NaN, 9);
  });
};

describe('the three-moment equation', () => {
  test('gives 1.25 wL in the middle of two equal spans (Popov, example 13.2)', () => {
    const structure = continuous({
      stations: [0, 4, 8],
      supports: 'prr',
      loads: [spread(10, 10, 0, 8)],
    });
    close(verticals(structure), [15, 50, 15]);
    close(threeMoment(structure, 'L').moments, [0, -20, 0]);
  });

  test('works two spans of unlike loads (NPTEL, example 5.22)', () => {
    const structure = continuous({
      stations: [0, 3, 6],
      supports: 'prr',
      loads: [down(120, 1.5), spread(40, 40, 3, 6)],
    });
    close(threeMoment(structure, 'L').moments, [0, -56.25, 0]);
    close(verticals(structure), [41.25, 157.5, 41.25]);
  });

  test('gives −3PL/16 for a force in the middle of each of two equal spans', () => {
    const structure = continuous({
      stations: [0, 8, 16],
      supports: 'prr',
      loads: [down(48, 4), down(48, 12)],
    });
    close(threeMoment(structure, 'L').moments, [0, -72, 0]);
    close(verticals(structure), [15, 66, 15]);
  });

  test.each([
    ['all spans', [spread(20, 20, 0, 15)], [0, -50, -50, 0], [40, 110, 110, 40]],
    ['the middle span', [spread(20, 20, 5, 10)], [0, -25, -25, 0], [-5, 55, 55, -5]],
    [
      'the end spans',
      [spread(20, 20, 0, 5), spread(20, 20, 10, 15)],
      [0, -25, -25, 0],
      [45, 55, 55, 45],
    ],
  ])('works three equal spans loaded on %s', (_, loads, moments, reactions) => {
    const structure = continuous({ stations: [0, 5, 10, 15], supports: 'prrr', loads });
    close(threeMoment(structure, 'L').moments, moments);
    close(verticals(structure), reactions);
  });

  test('works three spans αL, L, βL loaded on the middle one in closed form', () => {
    const [w, L, alpha, beta] = [12, 6, 0.7, 1.4];
    const stations = [0, alpha * L, (alpha + 1) * L, (alpha + 1 + beta) * L];
    const structure = continuous({
      stations,
      supports: 'prrr',
      loads: [spread(w, w, alpha * L, (alpha + 1) * L)],
    });
    const under = 4 * (alpha + 1) * (1 + beta) - 1;
    close(threeMoment(structure, 'L').moments, [
      0,
      (-((w * L * L) / 4) * (1 + 2 * beta)) / under,
      (-((w * L * L) / 4) * (1 + 2 * alpha)) / under,
      0,
    ]);
  });

  test('takes a built-in end beside a span of no length', () => {
    const structure = continuous({
      stations: [0, 6],
      supports: 'fr',
      loads: [spread(8, 8, 0, 6)],
    });
    close(threeMoment(structure, 'L').moments, [-36, 0]);
  });

  test('takes the moment of an overhang from its loads alone', () => {
    const { moments, beam } = threeMoment(
      continuous({
        stations: [0, 2, 8, 12],
        supports: '-prr',
        loads: [down(5, 0), spread(3, 3, 0, 2)],
      }),
      'L',
    );
    expect(beam.ends.left).toEqual({ kind: 'overhang', moment: -16 });
    expect(moments[0]).toBe(-16);
  });

  test('moves nothing but the moment that a sinking support makes', () => {
    const EI = 5000;
    const structure = continuous({
      stations: [0, 5, 10],
      supports: 'prr',
      loads: [],
      sinks: [0, 0.01, 0],
      stiffness: [{ from: 0, to: 10, EI }],
    });
    // 4 L M = 6 EI (2 δ / L)
    close(threeMoment(structure, 'L').moments, [0, (3 * EI * 0.01) / 25, 0]);
  });

  test('agrees with stiffness on beams of any spans, ends, loads, steps, sinkings and warmth', () => {
    fc.assert(
      fc.property(anyContinuous(), (structure) => {
        const outcome = solveBeam(structure);
        if (outcome.kind !== 'beam') throw new Error(outcome.unsolved.reason);
        const [result] = outcome.results;
        const hand = threeMoment(structure, 'L').components;
        const exact = structure.supports.map(
          ({ point }) =>
            result?.reactions.find((r) => r.point === point)?.components ?? [],
        );
        const forces = Math.max(...exact.flat().map(Math.abs), 1e-12);
        exact.forEach((list, support) => {
          list.forEach((value, index) => {
            expect(
              Math.abs(value - (hand[support]?.[index] ?? Number.NaN)),
            ).toBeLessThan(1e-9 * Math.max(forces, 1));
          });
        });
        const { components, stopsAt } = momentDistribution(structure, 'L');
        const moments = Math.max(
          forces,
          Math.abs(result?.extremes.moment.max.value ?? 0),
          Math.abs(result?.extremes.moment.min.value ?? 0),
        );
        exact.forEach((list, support) => {
          list.forEach((value, index) => {
            expect(
              Math.abs(value - (components[support]?.[index] ?? Number.NaN)),
            ).toBeLessThan((stopsAt + 1e-9) * Math.max(moments, 1));
          });
        });
      }),
      { numRuns: 80 },
    );
  });
});
