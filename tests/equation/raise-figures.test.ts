import { describe, expect, test } from 'vitest';
import { product, toLinear } from '../../src/equation/index.ts';
import { raiseFigures } from '../../src/equation/raise-figures.ts';
import { fig, giv } from './samples.ts';

describe('more figures', () => {
  test('go to rounded figures alone: not to exact ones, not to given ones', () => {
    const whole = product(fig(2 / 3, 'kip', 3), fig(6, 'ft', 3), giv('0.7 ft'));
    expect(toLinear(raiseFigures(whole, 2))).toBe('0.66667 kip (6.00 ft) (0.7 ft)');
  });

  test('stop where a double is noise, and never take figures away', () => {
    const third = fig(1 / 3, 'kip', 3);
    expect(toLinear(raiseFigures(third, 50))).toBe('0.333333333333 kip');
    const many = { ...third, print: { kind: 'figures', count: 14 } } as const;
    expect(raiseFigures(many, 1)).toEqual(many);
  });
});
