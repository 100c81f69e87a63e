import { describe, expect, test } from 'vitest';
import { statementsOf } from '../../../src/derivation/map-statements.ts';
import {
  derivedBeam,
  linesOf,
  linesOfStatement,
  siProject,
  stepOf,
  stepsOf,
} from '../../support/derived.ts';

const si = { 'project.yaml': siProject };
const propped = derivedBeam(
  {
    points: '{ A: 0 m, B: 8 m }',
    supports: '{ A: fixed, B: { type: roller, settlement: 10 mm, case: S } }',
    loads: '[ { case: G, uniform: 10 kN/m } ]',
    section: '{ I: 83.56e6 mm^4 }',
    material: '{ E: 200 GPa }',
  },
  { ...si, 'loads.yaml': 'cases:\n  G: { kind: dead }\n  S: { kind: settlement }\n' },
).derivation;

describe('narrateForceMethod', () => {
  test('releases the prop and leaves a cantilever', () => {
    const { redundants, leaves } = stepOf(
      stepsOf(propped, 'redundants', 'G'),
      'released',
    );
    expect(
      redundants.map(({ symbol }) => `${symbol.letter}_${symbol.subscript}`),
    ).toEqual(['R_B']);
    expect(leaves).toBe('cantilever');
  });

  test('works the movements at the release by virtual work and finds 3wL/8', () => {
    const lines = linesOf(propped, 'redundants', 'G');
    expect(lines).toContain(
      '∫(0 to 8 m) (−320.0 kN·m + 80.00 kN s − 5.000 kN/m s²) (8.000 m − s) ds = −5120 kN·m³',
    );
    expect(lines).toContain('E I δ_10 = −5120 kN·m³');
    expect(lines).toContain('E I δ_11 = 170.7 m³');
    expect(lines).toContain('E I δ_10 + E I δ_11 R_B = 0');
    expect(lines).toContain('= 30.00 kN');
    expect(lines).toContain('= 80.00 kN·m');
  });

  test('lets the release follow a prop that settles', () => {
    const step = stepOf(stepsOf(propped, 'redundants', 'S'), 'compatibility');
    expect(step.equations.map(({ allows }) => allows)).toEqual(['foot']);
    expect(
      step.equations.flatMap(({ statement }) => linesOfStatement(statement)),
    ).toEqual(['E I δ_10 + E I δ_11 R_B = −E I Δ_B', '= −16\u202f710 kN·m² (0.01 m)']);
  });

  test('tells that one stiffness is assumed where none is given, and works without it', () => {
    const { derivation, work } = derivedBeam(
      {
        points: '{ A: 0 m, B: 6 m }',
        supports: '{ A: fixed, B: fixed }',
        loads: '[ { uniform: 24 kN/m } ]',
      },
      si,
    );
    expect(work.solution.assumesConstantStiffness).toBe(true);
    const steps = stepsOf(derivation, 'redundants');
    expect(stepOf(steps, 'rigidity')).toMatchObject({ isAssumed: true, stretches: [] });
    expect(steps.flatMap(statementsOf).flatMap(linesOfStatement)).toContain(
      '= 72.00 kN·m',
    );
  });
});
