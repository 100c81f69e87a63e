import { describe, expect, test } from 'vitest';
import { tidyStructure, unit } from '../../src/statics/tidy-structure.ts';
import { beam, down, pin, roller, spread } from '../support/beam.ts';

describe('tidyStructure', () => {
  test('puts stations that differ in the last bit onto the named point', () => {
    const x = 0.1 + 0.2;
    const tidy = tidyStructure(
      beam({
        points: { A: 0, B: 0.3, C: 1 },
        supports: { A: pin, C: roller() },
        loads: [down(5, x)],
      }),
    );
    expect(x).not.toBe(0.3);
    expect(tidy.loads[0]).toMatchObject({ x: 0.3 });
  });

  test('puts two loads that mean one unnamed station onto one number', () => {
    const tidy = tidyStructure(
      beam({
        points: { A: 0, C: 10 },
        supports: { A: pin, C: roller() },
        loads: [down(5, 0.3), spread(2, 0.1 + 0.2, 10 + 1e-10)],
      }),
    );
    expect(tidy.loads[1]).toMatchObject({ from: 0.3, to: 10 });
  });

  test('makes directions and forces along an axis exactly so', () => {
    const tidy = tidyStructure(
      beam({
        points: { A: 0, C: 10 },
        supports: { A: pin, C: roller(90) },
        loads: [
          { at: 5, fx: 8e-16, fy: -8 },
          { span: [0, 5], x: [1e-16, 0], y: [-3, -1] },
        ],
      }),
    );
    expect(tidy.supports[1]!.restraints).toEqual([
      { kind: 'force', direction: [0, 1] },
    ]);
    expect(tidy.loads[0]).toMatchObject({ fx: 0, fy: -8 });
    expect(tidy.loads[1]).toMatchObject({ x1: 0, x2: 0 });
  });

  test('keeps a small component that is more than rounding', () => {
    const tidy = tidyStructure(
      beam({ points: { A: 0, C: 10 }, supports: { A: pin, C: roller(89.999) } }),
    );
    expect(tidy.supports[1]!.restraints[0]).toHaveProperty(
      'direction.0',
      expect.closeTo(1.745e-5, 8),
    );
  });

  test('leaves the structure that it was given as it was', () => {
    const given = beam({ points: { A: 0, C: 10 }, supports: { A: pin, C: roller() } });
    const before = JSON.stringify(given);
    tidyStructure(given);
    expect(JSON.stringify(given)).toBe(before);
  });
});

describe('unit', () => {
  test('is a direction of length 1, down for a force of no size', () => {
    expect(unit([3, -4])).toEqual([0.6, -0.8]);
    expect(unit([-7, 1e-15])).toEqual([-1, 0]);
    expect(unit([0, 0])).toEqual([0, -1]);
  });
});
