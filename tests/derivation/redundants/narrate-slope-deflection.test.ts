import { describe, expect, test } from 'vitest';
import {
  derivedBeam,
  linesOf,
  siProject,
  stepOf,
  stepsOf,
} from '../../support/derived.ts';

const si = { 'project.yaml': siProject };
const springs = derivedBeam(
  {
    points: '{ A: 0 m, B: 4 m, H: 6 m, C: 9 m, D: 12 m }',
    supports:
      '{ A: fixed, B: { type: spring, stiffness: 4 kN/mm }, C: { type: spring, stiffness: 3 kN/mm }, D: roller }',
    hinges: '[ H ]',
    loads: '[ { uniform: 8 kN/m, from: B, to: D }, { point: 20 kN, at: 2 m } ]',
    section: '{ I: 83.56e6 mm^4 }',
    material: '{ E: 200 GPa }',
  },
  si,
).derivation;

describe('narrateSlopeDeflection', () => {
  test('counts the turns and movements of joints that nothing holds, not those of hinges and simple ends', () => {
    const step = stepOf(stepsOf(springs, 'redundants'), 'joint-unknowns');
    expect(step.unknowns.map(({ what, point }) => `${what} ${point}`)).toEqual([
      'rotation B',
      'deflection B',
      'deflection H',
      'rotation C',
      'deflection C',
    ]);
    expect(step.knownEnds).toEqual(['H', 'D']);
  });

  test('holds ends fast by the formulas of each load', () => {
    const lines = linesOf(springs, 'redundants');
    expect(lines).toContain('F_AB = P_2 a b² / L²');
    expect(lines).toContain('= 20 kN (2 m) (2 m)² / (4 m)²');
    expect(lines).toContain('F_BH = F_BH,0 − r_BH F_HB,0');
    expect(lines).toContain('= 4.000 kN·m');
  });

  test('puts the springs into the equilibrium of their joints', () => {
    const lines = linesOf(springs, 'redundants');
    expect(lines).toContain('S_BA + S_BH + k_B v_B = 0');
    expect(lines).toContain(
      'k_B / (E I) = 4000 kN/m / (16\u202f710 kN·m²) = 0.2393/m³',
    );
    expect(lines).toContain('R_B = −k_B v_B');
  });

  test('shows five equations whole, with the solution and what is left of them', () => {
    const step = stepOf(stepsOf(springs, 'redundants'), 'system');
    expect(step.form).toBe('table');
    expect(step.residual.quantity.si).toBeLessThan(1e-12);
  });

  test('works a member whose joints cannot move without any unknown', () => {
    const { derivation } = derivedBeam(
      {
        points: '{ A: 0 m, B: 4 m, C: 9 m }',
        supports: '{ A: fixed, B: fixed, C: fixed }',
        loads: '[ { uniform: 12 kN/m } ]',
      },
      si,
    );
    const steps = stepsOf(derivation, 'redundants');
    expect(stepOf(steps, 'joint-unknowns').unknowns).toEqual([]);
    expect(steps.some(({ kind }) => kind === 'system')).toBe(false);
    expect(linesOf(derivation, 'redundants')).toContain('M_BC = F_BC');
    expect(linesOf(derivation, 'redundants')).toContain('= 25.00 kN·m');
  });
});
