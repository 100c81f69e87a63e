import { describe, expect, test } from 'vitest';
import type { BarLoad } from '../../../src/statics/elastic/acting.ts';
import { equivalentForces } from '../../../src/statics/elastic/fixed-end-forces.ts';
import { exact, rounded } from '../../../src/statics/linear/double-double.ts';

const bar = { from: 2, to: 8, length: exact(6), EI: 40 };
const forces = (load: BarLoad): readonly number[] =>
  equivalentForces(load, bar).map(rounded);

function expectClose(found: readonly number[], known: readonly number[]): void {
  for (const [index, value] of found.entries())
    expect(value).toBeCloseTo(known[index]!, 13);
}

describe('equivalentForces', () => {
  test('are those of the handbooks for a force, a uniform load and a triangle', () => {
    // P a b² / l² and P b² (3a + b) / l³ with P = −12, a = 2, b = 4
    expectClose(forces({ kind: 'force', at: 2, force: -12 }), [
      (-12 * 16 * 10) / 216,
      (-12 * 2 * 16) / 36,
      (-12 * 4 * 14) / 216,
      (12 * 4 * 4) / 36,
    ]);
    expectClose(
      forces({ kind: 'spread', from: 0, to: 6, q1: -5, q2: -5 }),
      [-15, -15, -15, 15],
    );
    expectClose(
      forces({ kind: 'spread', from: 0, to: 6, q1: 0, q2: -10 }),
      [-9, -12, -21, 18],
    );
  });

  test('are in balance with a couple, and with a load on a part', () => {
    const [up, turn, upThere, turnThere] = forces({
      kind: 'couple',
      at: 1.5,
      couple: 7,
    });
    expect(up! + upThere!).toBeCloseTo(0, 14);
    expect(turn! + turnThere! + 6 * upThere!).toBeCloseTo(7, 13);
    const part = forces({ kind: 'spread', from: 1, to: 4, q1: 2, q2: 5 });
    expect(part[0]! + part[2]!).toBeCloseTo(10.5, 13);
    expect(part[1]! + part[3]! + 6 * part[2]!).toBeCloseTo(3 * 2 * 2.5 + 4.5 * 3, 12);
  });

  test('turn the ends of a bar that wants to bend, by EI times its curvature', () => {
    expectClose(
      forces({ kind: 'curvature', from: 0, to: 6, curvature: 0.01 }),
      [0, -0.4, 0, 0.4],
    );
  });

  test('go straight to a joint at which a load stands', () => {
    expectClose(forces({ kind: 'force', at: 0, force: 3 }), [3, 0, 0, 0]);
    expectClose(forces({ kind: 'couple', at: 6, couple: 3 }), [0, 0, 0, 3]);
  });
});
