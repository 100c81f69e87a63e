import { describe, expect, test } from 'vitest';
import {
  isClosed,
  solveBeam,
  valueAt,
  type BeamResult,
  type BeamStructure,
} from '../../src/statics/index.ts';
import {
  beam,
  down,
  fixed,
  guide,
  pin,
  right,
  roller,
  spread,
  spring,
  turn,
} from '../support/beam.ts';

// Formulas of the handbooks' beam tables (as in the AISC Manual, Table 3-23, and Gere and
// Timoshenko, Mechanics of Materials, appendix on beams), written down from memory.

function solve(structure: BeamStructure): BeamResult {
  const outcome = solveBeam(structure);
  if (outcome.kind !== 'beam') throw new Error(JSON.stringify(outcome));
  const [result] = outcome.results;
  expect(result!.residuals.filter((residual) => !isClosed(residual))).toEqual([]);
  return result!;
}

/** A reaction as [x, y, moment], rounded to nine figures. */
function reaction(result: BeamResult, point: string): readonly (number | null)[] {
  const found = result.reactions.find((one) => one.point === point)!;
  return [found.x, found.y, found.moment].map((value) =>
    value === null ? null : Number(value.toPrecision(9)),
  );
}

describe('a simple beam', () => {
  const ends = { points: { A: 0, C: 8 }, supports: { A: pin, C: roller() } };

  test('under a uniform load: R = wL/2, M = wL²/8 in the middle', () => {
    const result = solve(beam({ ...ends, loads: [spread(3, 'A', 'C')] }));
    expect(reaction(result, 'A')).toEqual([0, 12, null]);
    expect(reaction(result, 'C')).toEqual([null, 12, null]);
    expect(result.extremes.moment.max).toEqual({ value: 24, x: 4 });
    expect(result.extremes.shear).toEqual({
      max: { value: 12, x: 0 },
      min: { value: -12, x: 8 },
    });
  });

  test('under a point load: R_A = Pb/L, M = Pab/L at the load', () => {
    const result = solve(beam({ ...ends, loads: [down(12, 2)] }));
    expect(reaction(result, 'A')).toEqual([0, 9, null]);
    expect(reaction(result, 'C')).toEqual([null, 3, null]);
    expect(result.extremes.moment.max).toEqual({ value: 18, x: 2 });
    expect(valueAt(result.shear, 2, 'left')).toBeCloseTo(9, 12);
    expect(valueAt(result.shear, 2, 'right')).toBeCloseTo(-3, 12);
  });

  test('under a load that grows from nothing: R = W/3 and 2W/3, M = 0.1283 WL at 0.5774 L', () => {
    const result = solve(beam({ ...ends, loads: [spread([0, 6], 'A', 'C')] }));
    const load = 24;
    expect(reaction(result, 'A')).toEqual([0, 8, null]);
    expect(reaction(result, 'C')).toEqual([null, 16, null]);
    expect(result.extremes.moment.max.x).toBeCloseTo(8 / Math.sqrt(3), 10);
    expect(result.extremes.moment.max.value).toBeCloseTo(
      (2 * load * 8) / (9 * Math.sqrt(3)),
      10,
    );
  });

  test('under a couple: R = M₀/L up and down, moment −M₀a/L and M₀b/L beside it', () => {
    const result = solve(beam({ ...ends, loads: [turn(16, 2)] }));
    expect(reaction(result, 'A')).toEqual([0, 2, null]);
    expect(reaction(result, 'C')).toEqual([null, -2, null]);
    expect(result.extremes.moment.max).toEqual({ value: expect.closeTo(4, 12), x: 2 });
    expect(result.extremes.moment.min).toEqual({
      value: expect.closeTo(-12, 12),
      x: 2,
    });
  });

  test('under a load that changes sign and has no resultant: R = ±wL/6, a cubic moment', () => {
    const result = solve(beam({ ...ends, loads: [spread([6, -6], 'A', 'C')] }));
    expect(reaction(result, 'A')).toEqual([0, 8, null]);
    expect(reaction(result, 'C')).toEqual([null, -8, null]);
    // M = wL²/(36√3)·2 at the quarter-odd points L/2 ∓ L/(2√3), by setting V = 0.
    const x = 4 - 8 / (2 * Math.sqrt(3));
    expect(result.extremes.moment.max.x).toBeCloseTo(x, 10);
    expect(result.extremes.moment.max.value).toBeCloseTo(
      8 * x - 3 * x ** 2 + x ** 3 / 4,
      10,
    );
    expect(result.extremes.moment.min.value).toBeCloseTo(
      -result.extremes.moment.max.value,
      10,
    );
  });

  test('with loads at its supports carries them straight down', () => {
    const result = solve(beam({ ...ends, loads: [down(5, 'A'), down(7, 'C')] }));
    expect(reaction(result, 'A')).toEqual([0, 5, null]);
    expect(reaction(result, 'C')).toEqual([null, 7, null]);
    expect(result.shear.pieces).toEqual([{ start: 0, end: 8, coefficients: [0] }]);
    expect(result.moment.pieces).toEqual([{ start: 0, end: 8, coefficients: [0] }]);
  });

  test('holds a force along it at the pin, in compression or tension', () => {
    const result = solve(beam({ ...ends, loads: [right(4, 'C')] }));
    expect(reaction(result, 'A')).toEqual([-4, 0, null]);
    expect(result.extremes.axial.max).toEqual({ value: 4, x: 0 });
  });
});

describe('a cantilever', () => {
  const wall = { points: { A: 0, B: 5 }, supports: { A: fixed } };

  test('under a uniform load: R = wL, M = −wL²/2 at the wall', () => {
    const result = solve(beam({ ...wall, loads: [spread(2, 'A', 'B')] }));
    expect(reaction(result, 'A')).toEqual([0, 10, 25]);
    expect(result.extremes.moment).toEqual({
      max: { value: 0, x: 5 },
      min: { value: -25, x: 0 },
    });
    expect(result.extremes.shear).toEqual({
      max: { value: 10, x: 0 },
      min: { value: 0, x: 5 },
    });
  });

  test('under a load at its tip: R = P, M = −PL', () => {
    const result = solve(beam({ ...wall, loads: [down(3, 'B')] }));
    expect(reaction(result, 'A')).toEqual([0, 3, 15]);
    expect(valueAt(result.moment, 5, 'left')).toBe(0);
  });

  test('built in at its right end carries the couple there the other way', () => {
    const result = solve(
      beam({
        points: { A: 0, B: 5 },
        supports: { B: fixed },
        loads: [spread([6, 0], 'A', 'B')],
      }),
    );
    // Triangle of 15, its centroid 10/3 from the wall.
    expect(reaction(result, 'B')).toEqual([0, 15, -50]);
    expect(result.extremes.moment.min).toEqual({
      value: expect.closeTo(-50, 10),
      x: 5,
    });
  });
});

describe('other beams of one piece', () => {
  test('an overhang: the tip load lifts the far support by Pa/L', () => {
    const result = solve(
      beam({
        points: { A: 0, B: 6, C: 9 },
        supports: { A: pin, B: roller() },
        loads: [down(8, 'C')],
      }),
    );
    expect(reaction(result, 'A')).toEqual([0, -4, null]);
    expect(reaction(result, 'B')).toEqual([null, 12, null]);
    expect(result.extremes.moment.min).toEqual({ value: -24, x: 6 });
    expect(result.extremes.moment.max.value).toBe(0);
  });

  test('a uniform load on beam and overhang: R_A = w(L² − a²)/2L, R_B = w(L + a)²/2L', () => {
    const result = solve(
      beam({
        points: { A: 0, B: 6, C: 9 },
        supports: { A: pin, B: roller() },
        loads: [spread(4, 'A', 'C')],
      }),
    );
    expect(reaction(result, 'A')).toEqual([0, 9, null]);
    expect(reaction(result, 'B')).toEqual([null, 27, null]);
    expect(result.extremes.moment.max.value).toBeCloseTo(
      (4 / (8 * 36)) * 9 ** 2 * 3 ** 2,
      10,
    );
    expect(result.extremes.moment.min.value).toBeCloseTo(-(4 * 9) / 2, 10);
  });

  test('a slanted roller pushes along its normal, and the pin takes the rest', () => {
    // 60°: R = 6 / sin 60°, its level part 6 / tan 60° goes to the pin.
    const result = solve(
      beam({
        points: { A: 0, C: 10 },
        supports: { A: pin, C: roller(60) },
        loads: [down(12, 5)],
      }),
    );
    expect(result.reactions[1]!.components[0]).toBeCloseTo(
      6 / Math.sin(Math.PI / 3),
      12,
    );
    expect(result.reactions[1]!.x).toBeCloseTo(6 / Math.sqrt(3), 12);
    expect(result.reactions[1]!.y).toBeCloseTo(6, 12);
    expect(result.reactions[0]!.x).toBeCloseTo(-6 / Math.sqrt(3), 12);
    expect(result.extremes.axial.max.value).toBeCloseTo(6 / Math.sqrt(3), 12);
  });

  test('a guide holds the turn: M = Pa at it, the roller takes all the load', () => {
    const result = solve(
      beam({
        points: { A: 0, C: 10 },
        supports: { A: guide, C: roller() },
        loads: [down(6, 4)],
      }),
    );
    expect(reaction(result, 'A')).toEqual([0, null, -36]);
    expect(reaction(result, 'C')).toEqual([null, 6, null]);
    expect(valueAt(result.moment, 2, 'left')).toBeCloseTo(36, 12);
  });

  test('springs and settlements change no force of a determinate beam', () => {
    const sinking = {
      type: 'roller',
      restraints: [
        {
          kind: 'force',
          direction: [0, 1],
          settlements: [{ case: 'all', value: 0.02 }],
        },
      ],
    } as const;
    const loads = [down(6, 4), spread(2, 0, 'C')];
    const plain = solve(
      beam({ points: { A: 0, C: 10 }, supports: { A: pin, C: roller() }, loads }),
    );
    const sunk = solve(
      beam({ points: { A: 0, C: 10 }, supports: { A: pin, C: sinking }, loads }),
    );
    const soft = solve(
      beam({ points: { A: 0, C: 10 }, supports: { A: pin, C: spring(50) }, loads }),
    );
    expect(sunk.reactions).toEqual(plain.reactions);
    expect(soft.reactions).toEqual(plain.reactions);
  });
});

describe('a beam with hinges', () => {
  const hung = {
    points: { A: 0, B: 8, H: 10, C: 16 },
    supports: { A: pin, B: roller(), C: roller() },
    hinges: ['H'],
  };

  test('hands half of the hung span through the hinge: R_C = wl/2, M_B = −(wl/2)a − wa²/2', () => {
    const result = solve(beam({ ...hung, loads: [spread(3, 'A', 'C')] }));
    expect(reaction(result, 'C')).toEqual([null, 9, null]);
    expect(result.hingeForces).toEqual([
      { point: 'H', x: 0, y: expect.closeTo(9, 12) },
    ]);
    expect(valueAt(result.moment, 8, 'left')).toBeCloseTo(-(9 * 2) - 6, 10);
    expect(valueAt(result.moment, 10, 'left')).toBe(0);
  });

  test('counts a load at the hinge on the left piece, and only there', () => {
    const result = solve(beam({ ...hung, loads: [down(5, 'H')] }));
    expect(result.hingeForces).toEqual([{ point: 'H', x: 0, y: 0 }]);
    expect(reaction(result, 'C')).toEqual([null, 0, null]);
    expect(reaction(result, 'B')).toEqual([null, 6.25, null]);
  });

  test('turns a couple at the hinge into forces on the side that it names', () => {
    const onRight = solve(beam({ ...hung, loads: [turn(12, 'H', { side: 'right' })] }));
    expect(reaction(onRight, 'C')).toEqual([null, -2, null]);
    expect(valueAt(onRight.moment, 10, 'left')).toBe(0);
    expect(valueAt(onRight.moment, 10, 'right')).toBeCloseTo(-12, 12);
    const onLeft = solve(beam({ ...hung, loads: [turn(12, 'H', { side: 'left' })] }));
    expect(reaction(onLeft, 'C')).toEqual([null, 0, null]);
    expect(reaction(onLeft, 'A')).toEqual([0, 1.5, null]);
    expect(valueAt(onLeft.moment, 10, 'left')).toBeCloseTo(12, 12);
    expect(valueAt(onLeft.moment, 10, 'right')).toBe(0);
    expect(solve(beam({ ...hung, loads: [turn(12, 'H')] })).reactions).toEqual(
      onLeft.reactions,
    );
  });

  test('passes forces along it through the hinge', () => {
    const result = solve(beam({ ...hung, loads: [right(7, 'C')] }));
    expect(result.hingeForces[0]!.x).toBe(-7);
    expect(reaction(result, 'A')).toEqual([-7, 0, null]);
    expect(result.extremes.axial.max).toEqual({ value: 7, x: 0 });
  });

  test('rests a drop-in span on two overhanging ones', () => {
    const result = solve(
      beam({
        points: { A: 0, B: 6, H: 8, I: 12, C: 14, D: 20 },
        supports: { A: pin, B: roller(), C: roller(), D: roller() },
        hinges: ['H', 'I'],
        loads: [spread(2, 'H', 'I'), down(6, 'I')],
      }),
    );
    // Each overhang holds up 4 of the drop-in span; the load at I stands on that span's end and adds 6.
    expect(result.hingeForces).toEqual([
      { point: 'H', x: 0, y: expect.closeTo(4, 12) },
      { point: 'I', x: 0, y: expect.closeTo(-10, 12) },
    ]);
    expect(valueAt(result.moment, 6, 'left')).toBeCloseTo(-8, 12);
    expect(valueAt(result.moment, 14, 'left')).toBeCloseTo(-20, 12);
  });
});

describe('solveBeam', () => {
  test('gives a result a case in their order, zero for one without loads', () => {
    const outcome = solveBeam(
      beam({
        points: { A: 0, C: 8 },
        supports: { A: pin, C: roller() },
        loads: [down(4, 2, { case: 'L' })],
        cases: ['D', 'L'],
      }),
    );
    const results = outcome.kind === 'beam' ? outcome.results : [];
    expect(results.map(({ mark }) => mark)).toEqual(['D', 'L']);
    expect(reaction(results[0]!, 'A')).toEqual([0, 0, null]);
    expect(results[0]!.extremes.moment.max).toEqual({ value: 0, x: 0 });
    expect(results[0]!.residuals.every(isClosed)).toBe(true);
  });

  test('gives exactly 0 where physics does, not the rounding', () => {
    // Three thirds of a length and a third of a load: nothing here is exact in binary.
    const result = solve(
      beam({
        points: { A: 0, B: 1 / 3, C: 1 },
        supports: { A: pin, C: roller() },
        loads: [
          down(1 / 3, 'A'),
          down(0.1, 'A'),
          down(0.7, 'A'),
          spread([0.3, 0.3], 'B', 'C'),
          spread(-0.3, 'B', 'C'),
        ],
      }),
    );
    expect(result.reactions[1]!.y).toBe(0);
    expect(result.extremes.shear.max.value).toBe(0);
    expect(result.extremes.moment.max.value).toBe(0);
    expect(JSON.stringify(result)).not.toContain('-0,');
  });

  test('gives null exactly where a support gives nothing', () => {
    const result = solve(
      beam({
        points: { A: 0, C: 8 },
        supports: { A: pin, C: roller(90) },
        loads: [down(4, 2)],
      }),
    );
    expect(
      result.reactions.map(({ x, y, moment }) => [
        x === null,
        y === null,
        moment === null,
      ]),
    ).toEqual([
      [false, false, true],
      [true, false, true],
    ]);
  });

  test('solves a stable beam however nearly unstable, with its moments still closed', () => {
    const result = solve(
      beam({
        points: { A: 0, B: 5, C: 10 },
        supports: { A: pin, C: roller(0.001) },
        loads: [down(10, 'B')],
      }),
    );
    expect(result.reactions[1]!.y).toBeCloseTo(5, 8);
    expect(valueAt(result.moment, 10, 'left')).toBeCloseTo(0, 8);
  });

  test('does not solve a beam that moves; what statics cannot tell it solves by stiffness', () => {
    const unstable = solveBeam(
      beam({ points: { A: 0, C: 8 }, supports: { A: roller(), C: roller() } }),
    );
    expect(unstable).toMatchObject({
      kind: 'unsolved',
      unsolved: { reason: 'unstable' },
    });
    const propped = solveBeam(
      beam({ points: { A: 0, C: 8 }, supports: { A: fixed, C: roller() } }),
    );
    expect(propped).toMatchObject({
      kind: 'beam',
      determinacy: { degree: 1, stable: true },
      assumesConstantStiffness: true,
    });
  });
});
