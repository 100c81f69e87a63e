import { describe, expect, test } from 'vitest';
import { addWork, equilibriumSystem } from '../../src/statics/equilibrium-system.ts';
import { tidyStructure } from '../../src/statics/tidy-structure.ts';
import { beam, fixed, pin, roller } from '../support/beam.ts';

describe('equilibriumSystem', () => {
  test('has a row for the slide and one for each joint, a column for each restraint', () => {
    const system = equilibriumSystem(
      tidyStructure(
        beam({
          points: { A: 0, B: 3, H: 4, C: 9 },
          supports: { A: pin, B: roller(), C: roller() },
          hinges: ['H'],
        }),
      ),
    );
    expect(system.rows).toEqual([
      [1, 0, 0, 0],
      [0, 1, 0.25, 0],
      [0, 0, 0.75, 0],
      [0, 0, 0, 1],
    ]);
    expect(system.units).toEqual([1, 1, 1, 1]);
  });

  test('measures a moment unknown in moment per length of its piece', () => {
    const system = equilibriumSystem(
      tidyStructure(
        beam({
          points: { A: 0, H: 4, C: 9 },
          supports: { A: fixed, C: roller() },
          hinges: ['H'],
        }),
      ),
    );
    expect(system.rows.map((row) => row[2])).toEqual([0, -1, 1, 0]);
    expect(system.units).toEqual([1, 1, 4, 1]);
  });
});

describe('addWork', () => {
  test('shares a force between the joints of its piece as a lever does', () => {
    const work = [0, 0, 0, 0];
    addWork(
      work,
      [
        { from: 0, to: 4 },
        { from: 4, to: 9 },
      ],
      1,
      { fx: 2, fy: 10, m: 10 * 2 },
    );
    expect(work).toEqual([2, 0, 6, 4]);
  });
});
