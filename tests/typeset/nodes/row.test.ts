import { describe, expect, test } from 'vitest';
import { characters, draw } from '../../support/equations.ts';

describe('rows', () => {
  test('relations and operators have the TeXbook’s spaces around them', () => {
    const [a, equals, b, plus, c] = characters(draw('1=2+3'));
    const digit = 5;
    expect(equals!.x - a!.x - digit).toBeCloseTo((10 * 5) / 18, 3);
    expect(plus!.x - b!.x - digit).toBeCloseTo((10 * 4) / 18, 3);
    expect(c!.x).toBeGreaterThan(plus!.x);
  });

  test('explicit spaces are kept', () => {
    const gap = (space: string): number => {
      const [a, b] = characters(draw(`1${space}2`));
      return b!.x - a!.x - 5;
    };
    expect(gap('')).toBeCloseTo(0, 9);
    expect(gap('\\,')).toBeCloseTo(10 / 6, 3);
    expect(gap('\\quad')).toBeCloseTo(10, 9);
    expect(gap('\\!')).toBeCloseTo(-10 / 6, 3);
    expect(gap('\\phantom{3}')).toBeCloseTo(5, 9);
  });
});
