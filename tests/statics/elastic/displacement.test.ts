import { describe, expect, test } from 'vitest';
import {
  compatibilityOf,
  isClosed,
  jumpsOf,
  solveBeam,
  valueAt,
  type BeamResult,
  type BeamStructure,
} from '../../../src/statics/index.ts';
import { beam, down, fixed, pin, roller, spread, spring } from '../../support/beam.ts';

const EI = 200;

function solved(structure: BeamStructure): BeamResult {
  const outcome = solveBeam(structure);
  if (outcome.kind !== 'beam') throw new Error(outcome.unsolved.reason);
  return outcome.results[0]!;
}

const stiff = (structure: BeamStructure): BeamStructure => ({
  ...structure,
  stiffness: [{ from: structure.points[0]!.x, to: structure.points.at(-1)!.x, EI }],
});

describe('the elastic curve', () => {
  test('of a simple span is 5 q l⁴ / 384 EI deep at its middle and exactly 0 at its supports', () => {
    const { displacement } = solved(
      stiff(
        beam({
          points: { A: 1, B: 9 },
          supports: { A: pin, B: roller() },
          loads: [spread(3, 'A', 'B')],
        }),
      ),
    );
    const { deflection, slope, extremes } = displacement!;
    expect(extremes.min.value).toBeCloseTo((-5 * 3 * 4096) / 384 / EI, 12);
    expect(extremes.min.x).toBeCloseTo(5, 9);
    expect(extremes.max).toEqual({ value: 0, x: 1 });
    expect([valueAt(deflection, 1, 'left'), valueAt(deflection, 9, 'left')]).toEqual([
      0, 0,
    ]);
    expect(valueAt(slope, 9, 'left')).toBeCloseTo((3 * 512) / 24 / EI, 12);
    expect(deflection.pieces[0]!.coefficients.length).toBe(5);
  });

  test('leaps in slope at a hinge and nowhere else', () => {
    const { displacement } = solved(
      stiff(
        beam({
          points: { A: 0, H: 4, B: 10 },
          supports: { A: fixed, B: roller() },
          hinges: ['H'],
          loads: [down(6, 7), spread(1, 0, 10)],
        }),
      ),
    );
    expect(jumpsOf(displacement!.slope).map(({ x }) => x)).toEqual([4]);
    expect(jumpsOf(displacement!.deflection)).toEqual([]);
    expect(valueAt(displacement!.slope, 0, 'right')).toBe(0);
  });

  test('sinks with its springs, each by its force over its stiffness', () => {
    const structure = stiff(
      beam({
        points: { A: 0, B: 10 },
        supports: {
          A: {
            ...spring(40),
            restraints: [...pin.restraints.slice(0, 1), ...spring(40).restraints],
          },
          B: spring(10),
        },
        loads: [down(8, 2.5)],
      }),
    );
    const { displacement, reactions } = solved(structure);
    expect(reactions.map(({ y }) => y)).toEqual([6, 2]);
    expect(valueAt(displacement!.deflection, 0, 'right')).toBeCloseTo(-0.15, 15);
    expect(valueAt(displacement!.deflection, 10, 'left')).toBeCloseTo(-0.2, 15);
  });

  test('is a straight line where only a support of a determinate beam sinks', () => {
    const sunk = {
      kind: 'force',
      direction: [0, 1],
      settlements: [{ case: 'all', value: 0.1 }],
    } as const;
    const { displacement } = solved(
      stiff(
        beam({
          points: { A: 0, B: 8, C: 10 },
          supports: { A: pin, B: { type: 'roller', restraints: [sunk] } },
        }),
      ),
    );
    const { deflection, extremes } = displacement!;
    expect(
      deflection.pieces.every(({ coefficients }) => coefficients.length <= 2),
    ).toBe(true);
    expect(valueAt(deflection, 8, 'left')).toBeCloseTo(-0.1, 15);
    expect(extremes.min).toEqual({ value: expect.closeTo(-0.125, 15), x: 10 });
  });
});

describe('compatibilityOf', () => {
  const structure = stiff(
    beam({
      points: { A: 0, B: 6, C: 12 },
      supports: { A: fixed, B: spring(30), C: roller(60) },
      loads: [spread(2, 0, 12), down(5, 8)],
    }),
  );
  const result = solved(structure);

  test('has a residual for every restraint that is not along the beam, all closed', () => {
    const residuals = compatibilityOf(structure, result, 'all');
    expect(residuals.map(({ equation }) => equation)).toEqual([
      'movement of A, restraint 2',
      'movement of A, restraint 3',
      'movement of B, restraint 1',
      'movement of C, restraint 1',
    ]);
    expect(residuals.every(isClosed)).toBe(true);
  });

  test('tells a curve that misses a support, and a spring that gives another force', () => {
    const { deflection } = result.displacement!;
    const lifted = {
      pieces: deflection.pieces.map((piece) => ({
        ...piece,
        coefficients: [
          (piece.coefficients[0] ?? 0) + 1e-6,
          ...piece.coefficients.slice(1),
        ],
      })),
    };
    const missed = {
      ...result,
      displacement: { ...result.displacement!, deflection: lifted },
    };
    const open = (one: BeamResult): readonly string[] =>
      compatibilityOf(structure, one, 'all')
        .filter((residual) => !isClosed(residual))
        .map(({ equation }) => equation);
    expect(open(missed)).toEqual([
      'movement of A, restraint 2',
      'movement of B, restraint 1',
      'movement of C, restraint 1',
    ]);
    const reactions = result.reactions.map((reaction, place) =>
      place === 1
        ? { ...reaction, components: [reaction.components[0]! + 0.01] }
        : reaction,
    );
    expect(open({ ...result, reactions })).toEqual(['movement of B, restraint 1']);
  });

  test('has nothing to say where there is no displacement', () => {
    const { displacement, ...bare } = result;
    expect(displacement).toBeDefined();
    expect(compatibilityOf(structure, bare, 'all')).toEqual([]);
  });
});
