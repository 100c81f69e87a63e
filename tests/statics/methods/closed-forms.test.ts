import { describe, expect, test } from 'vitest';
import type { BeamStructure } from '../../../src/statics/index.ts';
import { forceMethod } from '../../../src/statics/methods/force-method.ts';
import { slopeDeflection } from '../../../src/statics/methods/slope-deflection.ts';
import { beam, down, fixed, pin, roller, spread, spring } from '../../support/beam.ts';

/** Reactions by the force method and by slope-deflection, support by support; both must be the same. */
function reactions(structure: BeamStructure): readonly (readonly number[])[] {
  const [mark = ''] = structure.cases;
  const force = forceMethod(structure, mark).components;
  const slope = slopeDeflection(structure, mark).components;
  for (const [s, list] of force.entries())
    for (const [i, value] of list.entries()) expect(slope[s]![i]).toBeCloseTo(value, 4);
  return force;
}

const EI = 200e9 * 8356e-8;
const prismatic = (structure: BeamStructure, length: number): BeamStructure => ({
  ...structure,
  stiffness: [{ from: 0, to: length, EI }],
});

describe('closed forms of handbooks, by both hand methods', () => {
  test('propped cantilever, uniform load: 3wL/8 at the prop, wL²/8 at the fixed end', () => {
    // Public question bank: propped cantilever, UDL (w 10 kN/m, L 8 m): 30 kN, 50 kN, 80 kN·m.
    const [a, b] = reactions(
      beam({
        points: { A: 0, B: 8 },
        supports: { A: fixed, B: roller() },
        loads: [spread(10e3, 'A', 'B')],
      }),
    );
    expect(b![0]).toBeCloseTo(30e3, 4);
    expect(a![1]).toBeCloseTo(50e3, 4);
    expect(a![2]).toBeCloseTo(80e3, 4);
  });

  test('propped cantilever, load at midspan: 5P/16 at the prop, 3PL/16 at the fixed end', () => {
    const [a, b] = reactions(
      beam({
        points: { A: 0, C: 4, B: 8 },
        supports: { A: fixed, B: roller() },
        loads: [down(64e3, 'C')],
      }),
    );
    expect(b![0]).toBeCloseTo(20e3, 4);
    expect(a![1]).toBeCloseTo(44e3, 4);
    expect(a![2]).toBeCloseTo(96e3, 4);
  });

  test('built-in beam: wL²/12, PL/8, and w₀L²/30 and w₀L²/20 under a rising load', () => {
    const supports = { A: fixed, B: fixed };
    const uniform = reactions(
      beam({ points: { A: 0, B: 6 }, supports, loads: [spread(24e3, 'A', 'B')] }),
    );
    expect(
      [uniform[0]![2], uniform[1]![2]].map((m) => Math.round(m! * 1e3) / 1e6),
    ).toEqual([72, -72]);
    const point = reactions(
      beam({ points: { A: 0, C: 4, B: 8 }, supports, loads: [down(80e3, 'C')] }),
    );
    expect(point[0]![2]).toBeCloseTo(80e3, 4);
    const rising: BeamStructure = {
      ...beam({ points: { A: 0, B: 6 }, supports }),
      loads: [
        {
          id: 'w',
          case: 'D',
          kind: 'distributed',
          from: 0,
          to: 6,
          x1: 0,
          y1: 0,
          x2: 0,
          y2: -30e3,
        },
      ],
      cases: ['D'],
    };
    const [a, b] = reactions(rising);
    expect([a![1], b![1]].map((r) => Math.round(r!))).toEqual([27_000, 63_000]);
    expect([a![2], b![2]].map((m) => Math.round(m!))).toEqual([36_000, -54_000]);
  });

  test('a settled prop of a cantilever is pulled by 3EIΔ/L³', () => {
    const structure = beam({
      points: { A: 0, B: 8 },
      supports: { A: fixed, B: roller() },
    });
    const settled: BeamStructure = {
      ...prismatic(structure, 8),
      cases: ['S'],
      supports: structure.supports.map((support) =>
        support.point === 'B'
          ? {
              ...support,
              restraints: support.restraints.map((r) => ({
                ...r,
                settlements: [{ case: 'S', value: 0.01 }],
              })),
            }
          : support,
      ),
    };
    const [, b] = reactions(settled);
    expect(b![0]).toBeCloseTo((-3 * EI * 0.01) / 8 ** 3, 4);
  });

  test('a spring under a cantilever takes its share of the tip: P / (1 + 3EI/(kL³))', () => {
    const k = 4e6;
    const structure = beam({
      points: { A: 0, B: 5 },
      supports: { A: fixed, B: spring(k) },
      loads: [down(20e3, 'B')],
    });
    const [, b] = reactions(prismatic(structure, 5));
    expect(b![0]).toBeCloseTo(20e3 / (1 + (3 * EI) / (k * 5 ** 3)), 4);
  });

  test('a warm top gives a built-in beam the sagging moment EI α ΔT / h and no forces', () => {
    const structure: BeamStructure = {
      ...prismatic(
        beam({ points: { A: 0, B: 6 }, supports: { A: fixed, B: fixed } }),
        6,
      ),
      cases: ['T'],
      curvatures: [
        { id: 't', case: 'T', from: 0, to: 6, curvature: (-12e-6 * 20) / 0.4 },
      ],
    };
    const [a, b] = reactions(structure);
    const moment = (EI * 12e-6 * 20) / 0.4;
    expect(a![1]).toBeCloseTo(0, 4);
    // Sagging: the left support turns the beam clockwise.
    expect(a![2]).toBeCloseTo(-moment, 4);
    expect(b![2]).toBeCloseTo(moment, 4);
  });

  test('the force method releases props before fixed ends, and inner supports before outer ones', () => {
    const released = (structure: BeamStructure): readonly string[] =>
      forceMethod(structure, structure.cases[0] ?? '').releases.map(
        ({ unknown, restraint }) => `${restraint.kind} ${unknown.point}`,
      );
    const load = [down(1e3, 'B')];
    const points = { A: 0, B: 4, C: 9 };
    expect(
      released(beam({ points, supports: { A: fixed, C: roller() }, loads: load })),
    ).toEqual(['force C']);
    expect(
      released(beam({ points, supports: { A: fixed, C: fixed }, loads: load })),
    ).toEqual(['moment A', 'moment C']);
    expect(
      released(
        beam({ points, supports: { A: pin, B: roller(), C: roller() }, loads: load }),
      ),
    ).toEqual(['force B']);
  });
});
