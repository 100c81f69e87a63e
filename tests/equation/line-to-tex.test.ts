import { describe, expect, test } from 'vitest';
import { lineToTex, sumOfMoments, zero } from '../../src/equation/index.ts';
import { layOut } from './katex.ts';
import { fig, momentSum, sym } from './samples.ts';

describe('lines as TeX', () => {
  test('the right half begins with the relation sign', () => {
    const line = lineToTex({
      left: sumOfMoments('A', 'counterclockwise'),
      chain: [
        { sign: '=', of: momentSum },
        { sign: '=', of: zero() },
      ],
    });
    expect(line.left).toMatch(/\\sum M_\{\\mathrm\{A\}\}$/);
    expect(line.right).toMatch(/^= -8\.4.* = 0$/);
  });

  test('a continued line has no left half, and a box goes round the last expression', () => {
    expect(
      lineToTex({ chain: [{ sign: '≈', of: fig(2.4, 'kip') }], boxed: true }),
    ).toEqual({ left: '', right: '\\approx \\boxed{2.40\\,\\text{kip}}' });
  });

  test.each(['=', '≈', '≤', '≥', '<', '>', '≠'] as const)('%s parses', async (sign) => {
    const { left, right } = lineToTex({
      left: sym('a'),
      chain: [{ sign, of: sym('b') }],
    });
    expect((await layOut(`${left} ${right}`)).warnings).toEqual([]);
  });
});
