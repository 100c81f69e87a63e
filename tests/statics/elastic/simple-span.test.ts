import { describe, expect, test } from 'vitest';
import type { BarLoad } from '../../../src/statics/elastic/acting.ts';
import { simpleSpan } from '../../../src/statics/elastic/simple-span.ts';
import { exact, rounded } from '../../../src/statics/linear/double-double.ts';

const bar = { from: 2, to: 8, length: exact(6), EI: 40 };

function span(...loads: readonly BarLoad[]): Record<string, number> {
  const { left, right, turnLeft, turnRight } = simpleSpan(bar)(loads);
  const plain = { left, right, turnLeft, turnRight };
  return Object.fromEntries(
    Object.entries(plain).map(([name, value]) => [name, rounded(value)]),
  );
}

function expectClose(
  found: Record<string, number>,
  known: Record<string, number>,
): void {
  for (const [name, value] of Object.entries(known))
    expect(found[name]).toBeCloseTo(value, 13);
}

describe('simpleSpan', () => {
  test('has the end rotations q l³ / 24 EI and P l² / 16 EI', () => {
    const turn = (5 * 216) / 24 / 40;
    expectClose(span({ kind: 'spread', from: 0, to: 6, q1: -5, q2: -5 }), {
      left: 15,
      right: 15,
      turnLeft: -turn,
      turnRight: turn,
    });
    expectClose(span({ kind: 'force', at: 3, force: -8 }), {
      left: 4,
      right: 4,
      turnLeft: (-8 * 36) / 16 / 40,
      turnRight: (8 * 36) / 16 / 40,
    });
  });

  test('has 7 and 8 of q l³ / 360 EI under a triangle', () => {
    expectClose(span({ kind: 'spread', from: 0, to: 6, q1: 0, q2: -10 }), {
      left: 10,
      right: 20,
      turnLeft: (-7 * 10 * 216) / 360 / 40,
      turnRight: (8 * 10 * 216) / 360 / 40,
    });
  });

  test('has a third and a sixth of m l / EI under a couple at its end', () => {
    expectClose(span({ kind: 'couple', at: 0, couple: 9 }), {
      left: 1.5,
      right: -1.5,
      turnLeft: (9 * 6) / 3 / 40,
      turnRight: (-9 * 6) / 6 / 40,
    });
  });

  test('bows by half its free curvature at either end without a reaction', () => {
    expectClose(span({ kind: 'curvature', from: 0, to: 6, curvature: 0.01 }), {
      left: 0,
      right: 0,
      turnLeft: -0.03,
      turnRight: 0.03,
    });
  });

  test('adds loads up, and a load cut in two is the whole', () => {
    const whole = span({ kind: 'spread', from: 1, to: 5, q1: -2, q2: -10 });
    const parts = span(
      { kind: 'spread', from: 1, to: 3, q1: -2, q2: -6 },
      { kind: 'spread', from: 3, to: 5, q1: -6, q2: -10 },
    );
    expectClose(parts, whole);
  });
});
