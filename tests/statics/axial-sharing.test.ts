import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  areaUnder,
  isClosed,
  keyOfUnknown,
  solveBeam,
  solvingOrder,
  valueAt,
  type BeamResult,
  type BeamStructure,
  type Restraint,
} from '../../src/statics/index.ts';
import {
  beam,
  down,
  pin,
  right,
  roller,
  spread,
  spreadRight,
  spring,
} from '../support/beam.ts';
import { determinateBeam } from '../support/random-beam.ts';

function solve(structure: BeamStructure): BeamResult {
  const outcome = solveBeam(structure);
  if (outcome.kind !== 'beam') throw new Error(JSON.stringify(outcome));
  expect(outcome.results[0]!.residuals.every(isClosed)).toBe(true);
  return outcome.results[0]!;
}

/** What a support gives along the beam. */
function along(result: BeamResult, point: string): number | null {
  return result.reactions.find((one) => one.point === point)!.x;
}

function isRigidAlong(restraint: Restraint): boolean {
  return (
    restraint.kind === 'force' &&
    restraint.direction[1] === 0 &&
    restraint.stiffness === undefined
  );
}

const pins = { points: { A: 0, B: 6, C: 10 }, supports: { A: pin, C: pin } };

describe('shareAxially', () => {
  test('leaves two pins without force along the beam where no load runs along it', () => {
    const result = solve(beam({ ...pins, loads: [down(9, 'B'), spread(2, 'A', 'C')] }));
    expect([along(result, 'A'), along(result, 'C')]).toEqual([0, 0]);
    expect(result.reactions[0]!.y).toBeCloseTo(3.6 + 10, 12);
    expect(result.extremes.axial).toEqual({
      max: { value: 0, x: 0 },
      min: { value: 0, x: 0 },
    });
  });

  test('shares a force between two pins in proportion to the opposite distances', () => {
    const result = solve(beam({ ...pins, loads: [right(10, 'B')] }));
    expect(along(result, 'A')).toBeCloseTo(-4, 12);
    expect(along(result, 'C')).toBeCloseTo(-6, 12);
    expect(valueAt(result.axial, 3, 'left')).toBeCloseTo(4, 12);
    expect(valueAt(result.axial, 8, 'left')).toBeCloseTo(-6, 12);
  });

  test('shares a load spread along the beam: by halves if uniform, by thirds if it grows from nothing', () => {
    const uniform = solve(beam({ ...pins, loads: [spreadRight([3, 3], 'A', 'C')] }));
    expect(along(uniform, 'A')).toBeCloseTo(-15, 12);
    expect(along(uniform, 'C')).toBeCloseTo(-15, 12);
    const growing = solve(beam({ ...pins, loads: [spreadRight([0, 6], 'A', 'C')] }));
    expect(along(growing, 'A')).toBeCloseTo(-10, 12);
    expect(along(growing, 'C')).toBeCloseTo(-20, 12);
  });

  test('gives what lies outside the pins to the nearer one', () => {
    const result = solve(
      beam({
        points: { A: 0, B: 2, C: 8, D: 10 },
        supports: { B: pin, C: pin },
        loads: [right(5, 'A'), spreadRight([4, 4], 'C', 'D'), right(3, 'C')],
      }),
    );
    expect(along(result, 'B')).toBeCloseTo(-5, 12);
    expect(along(result, 'C')).toBeCloseTo(-11, 12);
  });

  test('takes each stretch by itself where three hold along the beam', () => {
    const result = solve(
      beam({
        points: { A: 0, B: 4, C: 10 },
        supports: { A: pin, B: roller(0), C: pin },
        loads: [right(8, 1), spreadRight([2, 2], 2, 10)],
      }),
    );
    // 8 at a quarter of AB: 6 to A, 2 to B. 4 over the right half of AB: 1 and 3. 12 over BC: 6 and 6.
    expect(along(result, 'A')).toBeCloseTo(-7, 12);
    expect(along(result, 'B')).toBeCloseTo(-11, 12);
    expect(along(result, 'C')).toBeCloseTo(-6, 12);
  });

  test('counts the level part of a slanted roller as a load on the bar', () => {
    const result = solve(
      beam({
        points: { A: 0, B: 5, C: 10 },
        supports: { A: pin, C: roller(45), B: roller(0) },
        loads: [down(8, 'B')],
      }),
    );
    // The roller pushes 4 up and 4 to the right at C, outside: all to B.
    expect(along(result, 'C')).toBeCloseTo(4, 12);
    expect(along(result, 'B')).toBeCloseTo(-4, 12);
    expect(along(result, 'A')).toBe(0);
  });

  test('keeps the sense in which a restraint counts positive', () => {
    const result = solve(
      beam({
        points: { A: 0, C: 10 },
        supports: {
          A: pin,
          C: {
            type: 'pin',
            restraints: [...roller(180).restraints, ...roller().restraints],
          },
        },
        loads: [right(10, 8)],
      }),
    );
    expect(along(result, 'C')).toBeCloseTo(-8, 12);
    expect(result.reactions[1]!.components[0]).toBeCloseTo(8, 12);
  });

  test('shares between springs alone by stiffness, and leaves springs idle beside a pin', () => {
    const sprung = {
      points: { A: 0, B: 5, C: 10 },
      loads: [right(12, 'B'), spreadRight([1, 0], 'A', 'C')],
    };
    const both = (
      x: number,
    ): { type: 'spring'; restraints: ReturnType<typeof spring>['restraints'] } => ({
      type: 'spring',
      restraints: [...spring(x, 'x').restraints, ...roller().restraints],
    });
    const springs = solve(
      beam({ ...sprung, supports: { A: both(1e3), C: both(3e3) } }),
    );
    expect(along(springs, 'A')).toBeCloseTo(-17 / 4, 12);
    expect(along(springs, 'C')).toBeCloseTo((-17 * 3) / 4, 12);
    const beside = solve(beam({ ...sprung, supports: { A: pin, C: both(3e3) } }));
    expect([along(beside, 'A'), along(beside, 'C')]).toEqual([
      expect.closeTo(-17, 12),
      0,
    ]);
  });

  test('never stretches the bar between two rigid restraints, whatever the loads', () => {
    fc.assert(
      fc.property(determinateBeam, (structure) => {
        const holdsAlong = structure.supports.some(({ restraints }) =>
          restraints.some(isRigidAlong),
        );
        fc.pre(holdsAlong);
        const supports = structure.supports.map((support) =>
          support.restraints.length === 1 && support.restraints[0]?.kind === 'force'
            ? {
                ...support,
                restraints: [
                  ...support.restraints,
                  { kind: 'force', direction: [1, 0] } as const,
                ],
              }
            : support,
        );
        const outcome = solveBeam({ ...structure, supports });
        if (outcome.kind !== 'beam') throw new Error(JSON.stringify(outcome));
        // The hand calculation gets by as well, and shares once.
        const { steps } = solvingOrder({ ...structure, supports });
        const found = steps.flatMap((step) =>
          step.kind === 'single' ? [step.finds] : step.finds,
        );
        const unknowns = supports.flatMap(({ restraints }) => restraints).length;
        expect(new Set(found.map(keyOfUnknown)).size).toBe(found.length);
        expect(found).toHaveLength(unknowns + 2 * structure.hinges.length);
        const held = supports
          .filter(({ restraints }) => restraints.some(isRigidAlong))
          .map(({ x }) => x)
          .sort((a, b) => a - b);
        for (const { axial, residuals } of outcome.results) {
          expect(residuals.every(isClosed)).toBe(true);
          const size = Math.max(
            1,
            ...axial.pieces.map(({ coefficients }) => Math.abs(coefficients[0]!)),
          );
          for (const [index, to] of held.slice(1).entries()) {
            const from = held[index]!;
            expect(Math.abs(areaUnder(axial, from, to))).toBeLessThan(
              1e-8 * size * (to - from) + 1e-6,
            );
          }
        }
      }),
    );
  });
});
