import { describe, expect, test } from 'vitest';
import {
  determinacy,
  type BeamStructure,
  type Determinacy,
} from '../../src/statics/index.ts';
import {
  beam,
  fixed,
  guide,
  pin,
  roller,
  spring,
  type SupportSketch,
} from '../support/beam.ts';

const points = { A: 0, B: 6, C: 15, D: 21 };

function of(
  supports: Readonly<Record<string, SupportSketch>>,
  hinges: readonly string[] = [],
): Determinacy {
  return determinacy(beam({ points, supports, hinges }));
}

describe('determinacy', () => {
  test.each([
    ['a simple beam', of({ A: pin, D: roller() }), 3, 3],
    ['a cantilever', of({ A: fixed }), 3, 3],
    ['an overhanging beam', of({ B: pin, C: roller() }), 3, 3],
    ['a guide and a roller', of({ A: guide, D: roller() }), 3, 3],
    ['a slanted roller', of({ A: pin, D: roller(60) }), 3, 3],
    ['a beam with a hung piece', of({ A: pin, B: roller(), D: roller() }, ['C']), 4, 4],
    ['a hung piece on a cantilever', of({ A: fixed, D: roller() }, ['C']), 4, 4],
    ['a spring for a roller', of({ A: pin, D: spring(4e6) }), 3, 3],
  ])('finds %s determinate', (_, found, unknowns, equations) => {
    expect(found).toMatchObject({
      unknowns,
      equations,
      degree: 0,
      rank: equations,
      redundants: 0,
      mechanisms: 0,
      stable: true,
      axialOnly: false,
      nearlyUnstable: false,
    });
    expect(found).not.toHaveProperty('instability');
  });

  test('counts the redundants of an indeterminate beam', () => {
    expect(of({ A: fixed, D: roller() })).toMatchObject({
      degree: 1,
      redundants: 1,
      stable: true,
      axialOnly: false,
    });
    expect(of({ A: fixed, D: fixed })).toMatchObject({
      degree: 3,
      redundants: 3,
      axialOnly: false,
    });
    expect(of({ A: pin, B: roller(), D: pin })).toMatchObject({
      redundants: 2,
      axialOnly: false,
    });
  });

  test('does not let a count of 0 hide a redundant and a mechanism', () => {
    const found = determinacy(
      beam({
        points: { ...points, E: 24 },
        supports: { A: pin, B: roller(), C: roller() },
        hinges: ['D'],
      }),
    );
    expect(found).toMatchObject({
      degree: 0,
      rank: 3,
      redundants: 1,
      mechanisms: 1,
      stable: false,
    });
  });

  test('counts a spring with rotation as two, a pin with rotation as three', () => {
    const turning = {
      type: 'spring',
      restraints: [...spring(4e6).restraints, { kind: 'moment', stiffness: 9e3 }],
    } as const;
    const stiff = {
      type: 'pin',
      restraints: [...pin.restraints, { kind: 'moment', stiffness: 9e3 }],
    } as const;
    expect(of({ A: turning, D: roller(0) })).toMatchObject({
      unknowns: 3,
      stable: true,
    });
    expect(of({ A: stiff })).toMatchObject({ unknowns: 3, degree: 0, stable: true });
  });
});

describe('axialOnly', () => {
  test('is said of two pins, of three, and of pins with a hinge between', () => {
    expect(of({ A: pin, D: pin })).toMatchObject({
      degree: 1,
      redundants: 1,
      axialOnly: true,
    });
    expect(of({ A: pin, B: roller(0), C: roller(0), D: pin })).toMatchObject({
      redundants: 3,
      axialOnly: true,
    });
    expect(of({ A: pin, B: roller(), D: pin }, ['C'])).toMatchObject({
      redundants: 1,
      axialOnly: true,
    });
    expect(of({ A: fixed, D: roller(0) })).toMatchObject({
      redundants: 1,
      axialOnly: true,
    });
  });

  test('is not said where a slanted roller shares in the redundancy', () => {
    expect(of({ A: pin, D: pin, B: roller(60) })).toMatchObject({
      redundants: 2,
      axialOnly: false,
    });
  });

  test('is not said where a foot moves along the beam, for then EA matters', () => {
    const moving: SupportSketch = {
      type: 'pin',
      restraints: [
        { kind: 'force', direction: [1, 0], settlements: [{ case: 'T', value: 0.01 }] },
        { kind: 'force', direction: [0, 1] },
      ],
    };
    expect(of({ A: pin, D: moving })).toMatchObject({
      redundants: 1,
      axialOnly: false,
    });
    expect(of({ A: moving, D: roller() })).toMatchObject({
      redundants: 0,
      stable: true,
    });
  });
});

describe('nearlyUnstable', () => {
  test('is said of a roller whose line all but passes the pin, and not of an ordinary slope', () => {
    expect(of({ A: pin, D: roller(1) })).toMatchObject({
      stable: true,
      nearlyUnstable: true,
    });
    expect(of({ A: pin, D: roller(179) })).toMatchObject({
      stable: true,
      nearlyUnstable: true,
    });
    expect(of({ A: pin, D: roller(10) })).toMatchObject({
      stable: true,
      nearlyUnstable: false,
    });
    expect(of({ A: pin, D: roller(0) })).toMatchObject({
      stable: false,
      nearlyUnstable: false,
    });
  });

  test('is said of bearings a hundredth of the length apart', () => {
    const close = beam({
      points: { A: 0, B: 0.2, C: 20 },
      supports: { A: pin, B: roller() },
    });
    expect(determinacy(close).nearlyUnstable).toBe(true);
    const apart = beam({
      points: { A: 0, B: 5, C: 20 },
      supports: { A: pin, B: roller() },
    });
    expect(determinacy(apart).nearlyUnstable).toBe(false);
  });

  test('comes from a condition number near 2 / sin α', () => {
    const { condition } = of({ A: pin, D: roller(2) });
    expect(condition).toBeCloseTo(2 / Math.sin(Math.PI / 90), 0);
  });

  test('does not depend on units', () => {
    const inch = (structure: BeamStructure): BeamStructure => ({
      ...structure,
      points: structure.points.map((p) => ({ ...p, x: p.x / 0.0254 })),
      supports: structure.supports.map((s) => ({ ...s, x: s.x / 0.0254 })),
    });
    const metre = beam({ points, supports: { A: fixed } });
    expect(determinacy(inch(metre)).condition).toBeCloseTo(
      determinacy(metre).condition,
      12,
    );
  });
});
