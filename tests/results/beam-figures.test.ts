import { describe, expect, test } from 'vitest';
import { closureFigures, entryFigures } from '../../src/results/beam-figures.ts';
import { figuresIn } from '../../src/results/figures-in.ts';
import { solveBeam, type BeamResult } from '../../src/statics/index.ts';
import { beam, down, fixed, pin, roller, spread, turn } from '../support/beam.ts';

const kN = 1000;
const figure = figuresIn('si');

const resultOf = (sketch: Parameters<typeof beam>[0]): BeamResult => {
  const outcome = solveBeam(beam(sketch));
  if (outcome.kind !== 'beam') throw new Error('unsolved');
  return outcome.results[0]!;
};

const simple = resultOf({
  points: { A: 0, B: 6 },
  supports: { A: pin, B: roller() },
  loads: [down(12 * kN, 2)],
});

describe('entryFigures', () => {
  test('gives each reaction that a support can give, zeros too, and null where it gives none', () => {
    expect(entryFigures(simple, figure, undefined).reactions).toEqual([
      {
        point: 'A',
        x: { value: 0, unit: 'kN' },
        y: { value: 8, unit: 'kN' },
        moment: null,
      },
      { point: 'B', x: null, y: { value: 4, unit: 'kN' }, moment: null },
    ]);
  });

  test('gives moments of supports counterclockwise, shear up on the left, sagging positive', () => {
    const entry = entryFigures(
      resultOf({
        points: { A: 0, B: 3 },
        supports: { A: fixed },
        loads: [down(5 * kN, 'B')],
      }),
      figure,
      undefined,
    );
    expect(entry.reactions[0]?.moment).toEqual({ value: 15, unit: 'kN m' });
    expect(entry.shear.max.value).toBe(5);
    expect(entry.moment.min).toEqual({
      value: -15,
      unit: 'kN m',
      at: { value: 0, unit: 'm' },
    });
  });

  test('places an extreme at its leftmost station', () => {
    const entry = entryFigures(
      resultOf({
        points: { A: 0, B: 9 },
        supports: { A: pin, B: roller() },
        loads: [down(6 * kN, 3), down(6 * kN, 6)],
      }),
      figure,
      undefined,
    );
    expect(entry.moment.max).toMatchObject({ value: 18, at: { value: 3 } });
    expect(entry.shear.max).toMatchObject({ value: 6, at: { value: 0 } });
  });

  test('has no stations unless asked, and no deflection without E and I', () => {
    const entry = entryFigures(simple, figure, undefined);
    expect(Object.keys(entry)).toEqual(['reactions', 'shear', 'moment']);
  });

  test('takes the first station just right of itself and all others just left', () => {
    const entry = entryFigures(simple, figure, 3);
    expect(
      entry.stations?.map(({ x, shear, moment }) => [
        x.value,
        shear.value,
        moment.value,
      ]),
    ).toEqual([
      [0, 8, 0],
      [2, 8, 16],
      [4, -4, 8],
      [6, -4, 0],
    ]);
    expect(
      entry.stations?.every((s) => s.slope === null && s.deflection === null),
    ).toBe(true);
  });

  test('stays left of a jump that rounding would step past', () => {
    // Station 3 of 6 on 0.2 m comes out as 0.10000000000000002, right of the force at 0.1.
    expect((0.2 * 3) / 6).toBeGreaterThan(0.1);
    const entry = entryFigures(
      resultOf({
        points: { A: 0, B: 0.2 },
        supports: { A: pin, B: roller() },
        loads: [down(7 * kN, 0.1)],
      }),
      figure,
      6,
    );
    expect(entry.stations?.[3]?.shear.value).toBeCloseTo(3.5, 9);
    expect(entry.stations?.[4]?.shear.value).toBeCloseTo(-3.5, 9);
  });

  test('shows a couple at the left end, which stands left of the first station', () => {
    const entry = entryFigures(
      resultOf({
        points: { A: 0, B: 4 },
        supports: { A: pin, B: roller() },
        loads: [turn(-8 * kN, 'A')],
      }),
      figure,
      2,
    );
    expect(entry.stations?.map((s) => s.moment.value)).toEqual([8, 4, 0]);
  });

  test.each([0, -3, 2.5, Number.NaN])('refuses to divide a member by %s', (count) => {
    expect(() => entryFigures(simple, figure, count)).toThrow(RangeError);
  });
});

describe('closureFigures', () => {
  test('gives forces and moments their own units', () => {
    const closure = closureFigures(
      resultOf({
        points: { A: 0, B: 6, C: 10 },
        supports: { A: pin, B: roller(), C: roller() },
        hinges: ['B'],
        loads: [spread(2 * kN, 'A', 'C')],
      }),
      figure,
    );
    const units = Object.fromEntries(
      closure.map((entry) => [entry.equation, entry.scale.unit]),
    );
    expect(units).toEqual({
      'forces x': 'kN',
      'forces y': 'kN',
      'moments about A': 'kN m',
      'moments about B': 'kN m',
      'moments about C': 'kN m',
      'moments about B, right part': 'kN m',
      'closing axial': 'kN',
      'closing shear': 'kN',
      'closing moment': 'kN m',
    });
    for (const entry of closure) {
      expect(entry.result).toBe('all');
      expect(Math.abs(entry.residual.value)).toBeLessThanOrEqual(
        1e-9 * entry.scale.value,
      );
    }
  });
});
