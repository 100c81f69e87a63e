import { describe, expect, test } from 'vitest';
import { narrateSystem } from '../../../src/derivation/linear-system/narrate-system.ts';
import type { LinearSystem } from '../../../src/derivation/linear-system/system.ts';
import { name, recheck } from '../../../src/equation/index.ts';
import { displayUnit } from '../../../src/units/index.ts';
import { linesOfStatement } from '../../support/derived.ts';

const moment = displayUnit('si', 'moment');
const rigidity = displayUnit('si', 'rigidity');

/** A chain of unknown turns, each tied to its neighbours, with the values given as its solution. */
function chain(values: readonly number[]): LinearSystem {
  const factor = (i: number, j: number): number =>
    i === j ? 2 : Math.abs(i - j) === 1 ? 0.5 : 0;
  return {
    figures: 4,
    unknowns: values.map((value, i) => ({
      of: name({ letter: 'θ', subscript: String(i + 1), meaning: 'a turn' }),
      unit: rigidity,
      value,
    })),
    rows: values.map((_, i) => ({
      number: i + 1,
      factors: values.map((__, j) => factor(i, j)),
      known: values.reduce((sum, value, j) => sum + factor(i, j) * value, 0),
      unit: moment,
    })),
  };
}

describe('narrateSystem', () => {
  test('eliminates up to four unknowns step by step, each line workable again', () => {
    const step = narrateSystem(chain([12_000, -7000, 3000, 5500]));
    expect(step.form).toBe('worked');
    expect(step.equations.map(linesOfStatement)[0]).toEqual([
      '2.000/m θ_1 + 0.5000/m θ_2 = 20.50 kN·m',
    ]);
    const found = step.elimination.filter(({ what }) => what === 'back-substitute');
    expect(found.map(({ statement }) => linesOfStatement(statement).at(-1))).toEqual([
      '= 5.500 kN·m²',
      '= 3.000 kN·m²',
      '= −7.000 kN·m²',
      '= 12.00 kN·m²',
    ]);
    for (const { statement } of step.elimination)
      for (const { needs } of recheck(statement)) expect(needs).not.toBeNull();
  });

  test('shows more of them whole, with the solution and what is left of the equations', () => {
    const step = narrateSystem(chain([1, 2, 3, 4, 5].map((n) => n * 1000)));
    expect(step.form).toBe('table');
    expect(step.elimination).toEqual([]);
    expect(step.table?.rows).toHaveLength(5);
    expect(step.solution).toHaveLength(5);
    expect(step.residual.quantity.si).toBeLessThan(1e-12);
  });

  test('shows line by line what no table on the page would hold', () => {
    const step = narrateSystem(chain(Array.from({ length: 12 }, (_, i) => i * 100)));
    expect(step.form).toBe('lines');
    expect(step.equations).toHaveLength(12);
  });

  test('tells a wrong solution by the residual', () => {
    const system = chain([1000, 2000, 3000, 4000, 5000]);
    const [first, ...others] = system.unknowns;
    const wrong = { ...system, unknowns: [{ ...first!, value: 1100 }, ...others] };
    expect(narrateSystem(wrong).residual.quantity.si).toBeGreaterThan(1e-3);
  });

  test('refuses equations that are not independent', () => {
    const system = chain([1000, 2000]);
    const [row] = system.rows;
    const twice = { ...system, rows: [row!, { ...row!, number: 2 }] };
    expect(() => narrateSystem(twice)).toThrow(RangeError);
  });
});
