import { describe, expect, test } from 'vitest';
import {
  compatibilityOf,
  isClosed,
  solverOf,
  solveBeam,
  superpose,
  valueAt,
  type BeamResult,
  type BeamSolver,
  type BeamStructure,
  type Load,
} from '../../src/statics/index.ts';
import {
  beam,
  down,
  fixed,
  pin,
  right,
  roller,
  spread,
  spring,
} from '../support/beam.ts';

const points = { A: 0, B: 4, C: 10 };
const EI = 3e4;
const propped: BeamStructure = {
  ...beam({
    points,
    supports: { A: fixed, C: roller() },
    loads: [spread(12, 'A', 'C')],
  }),
  stiffness: [{ from: 0, to: 10, EI }],
};

function ready(structure: BeamStructure): BeamSolver {
  const solver = solverOf(structure);
  if (solver.kind === 'unsolved') throw new Error(solver.unsolved.reason);
  return solver;
}

function stateOf(
  solver: BeamSolver,
  ...asked: Parameters<BeamSolver['state']>
): BeamResult {
  const state = solver.state(...asked);
  if (state.kind === 'unsolved') throw new Error(state.unsolved.reason);
  return state.result;
}

const unit = (x: number): Load => ({
  id: 'unit',
  case: 'any',
  kind: 'point',
  x,
  fx: 0,
  fy: -1,
});

describe('solverOf', () => {
  test('solves for any loads, told under any mark, whatever the loads of the structure', () => {
    const result = stateOf(ready(propped), 'unit at 4', [unit(4)]);
    expect(result.mark).toBe('unit at 4');
    // P a² (3 l − a) / 2 l³ at the prop
    expect(result.reactions[1]!.y).toBeCloseTo((16 * 26) / 2000, 14);
    expect(result.residuals.every(isClosed)).toBe(true);
    expect(result.agreement!.difference).toBeLessThanOrEqual(1e-15);
    expect(result.agreement).toMatchObject({ allowed: 1e-9 });
  });

  test('gives what solveBeam gives for the loads of a case', () => {
    const outcome = solveBeam(propped);
    const state = stateOf(ready(propped), 'all', propped.loads, { movementsOf: 'all' });
    expect(outcome).toMatchObject({
      results: [state],
      assumesConstantStiffness: false,
    });
  });

  test('moves feet and bends by temperature only for the case named', () => {
    const sunk = {
      kind: 'force',
      direction: [0, 1],
      settlements: [{ case: 'S', value: 0.03 }],
    } as const;
    const structure: BeamStructure = {
      ...propped,
      cases: ['all', 'S'],
      supports: [
        propped.supports[0]!,
        { point: 'C', x: 10, type: 'roller', restraints: [sunk] },
      ],
      curvatures: [{ id: 'T', case: 'T', from: 0, to: 10, curvature: -1e-3 }],
    };
    const solver = ready(structure);
    expect(stateOf(solver, 'none', []).reactions[1]!.y).toBe(0);
    const settled = stateOf(solver, 'S', [], { movementsOf: 'S' });
    expect(settled.reactions[1]!.y).toBeCloseTo((-3 * EI * 0.03) / 1000, 12);
    expect(valueAt(settled.displacement!.deflection, 10, 'left')).toBe(-0.03);
    expect(settled.displacement!.extremes.min).toEqual({ value: -0.03, x: 10 });
    const warm = stateOf(solver, 'T', [], { movementsOf: 'T' });
    // Warmer above, the beam would bow its free end down; the prop holds it with 3 EI κ / 2 l.
    expect(warm.reactions[1]!.y).toBeCloseTo((3 * EI * 1e-3) / 20, 12);
  });

  test('strains nothing in a determinate beam by settlement and temperature, yet moves it', () => {
    const sunk = {
      kind: 'force',
      direction: [0, 1],
      settlements: [{ case: 'all', value: 0.02 }],
    } as const;
    const structure: BeamStructure = {
      ...beam({
        points,
        supports: { A: pin, C: { type: 'roller', restraints: [sunk] } },
      }),
      stiffness: [{ from: 0, to: 10, EI }],
      curvatures: [{ id: 'T', case: 'all', from: 0, to: 10, curvature: -1e-3 }],
    };
    const result = stateOf(ready(structure), 'all', [], { movementsOf: 'all' });
    expect(result.extremes.moment.max.value).toBe(0);
    expect(result.agreement).toBeUndefined();
    // Half of the sinking, and the bow κ l² / 8 upward
    expect(valueAt(result.displacement!.deflection, 5, 'left')).toBeCloseTo(
      0.0125 - 0.01,
      15,
    );
    expect(compatibilityOf(structure, result, 'all').every(isClosed)).toBe(true);
  });

  test('needs a stiffness for springs, settlements and temperature of an indeterminate beam, and else assumes one', () => {
    const { stiffness, ...bare } = propped;
    expect(stiffness).toBeDefined();
    const found = ready(bare);
    expect(found.assumesConstantStiffness).toBe(true);
    const result = stateOf(found, 'all', bare.loads);
    expect(result.reactions[1]!.y).toBeCloseTo((3 / 8) * 120, 12);
    expect(result.displacement).toBeUndefined();
    const sunk = {
      kind: 'force',
      direction: [0, 1],
      settlements: [{ case: 'all', value: 0.02 }],
    } as const;
    const lacking: readonly BeamStructure[] = [
      { ...bare, curvatures: [{ id: 'T', case: 'all', from: 0, to: 1, curvature: 1 }] },
      beam({ points, supports: { A: fixed, C: spring(5) } }),
      beam({
        points,
        supports: { A: fixed, C: { type: 'roller', restraints: [sunk] } },
      }),
    ];
    for (const structure of lacking)
      expect(solverOf(structure)).toMatchObject({
        kind: 'unsolved',
        unsolved: { reason: 'needs-stiffness' },
      });
    const determinate = beam({ points, supports: { A: pin, C: spring(5) } });
    expect(solverOf(determinate).kind).toBe('solver');
  });

  test('shares forces along the beam apart from bending', () => {
    const structure = beam({
      points,
      supports: { A: pin, B: roller(), C: pin },
      loads: [right(10, 'B'), down(6, 2)],
    });
    const [result] = [stateOf(ready(structure), 'all', structure.loads)];
    expect(result.reactions.map(({ x }) => x)).toEqual([-6, null, -4]);
    expect(result.agreement!.difference).toBeLessThanOrEqual(1e-15);
    expect(result.reactions[1]!.y).toBeGreaterThan(0);
  });

  test('leaves a movement along the beam to those who know EA', () => {
    const slid = {
      kind: 'force',
      direction: [1, 0],
      settlements: [{ case: 'all', value: 1 }],
    } as const;
    const A = { type: 'pin', restraints: [slid, ...roller().restraints] } as const;
    const structure = beam({ points, supports: { A, B: roller(), C: pin } });
    expect(
      solverOf({ ...structure, stiffness: [{ from: 0, to: 10, EI }] }),
    ).toMatchObject({
      unsolved: { reason: 'indeterminate' },
    });
  });

  test('reports a beam that moves, and refuses loads that are not on the beam', () => {
    expect(
      solverOf(beam({ points, supports: { A: roller(), C: roller() } })),
    ).toMatchObject({
      kind: 'unsolved',
      unsolved: { reason: 'unstable' },
    });
    expect(() => ready(propped).state('far', [unit(11)])).toThrow('not on the beam');
  });

  test('superposes displacement and the worse agreement; none where one lacks it', () => {
    const solver = ready(propped);
    const states = [stateOf(solver, 'a', [unit(4)]), stateOf(solver, 'b', [unit(7)])];
    const both = [
      { case: 'a', factor: 2 },
      { case: 'b', factor: -3 },
    ];
    const sum = superpose(states, both, 'sum');
    const direct = stateOf(solver, 'sum', [
      { ...unit(4), fy: -2 } as Load,
      { ...unit(7), fy: 3 } as Load,
    ]);
    for (const x of [1, 5, 8.5])
      expect(valueAt(sum.displacement!.deflection, x, 'left')).toBeCloseTo(
        valueAt(direct.displacement!.deflection, x, 'left'),
        15,
      );
    expect(sum.displacement!.extremes.max.x).toBeCloseTo(
      direct.displacement!.extremes.max.x,
      9,
    );
    expect(sum.agreement).toMatchObject({ allowed: 1e-9 });
    const { displacement, ...without } = states[1]!;
    expect(displacement).toBeDefined();
    expect(superpose([states[0]!, without], both, 'sum').displacement).toBeUndefined();
  });
});
