import { describe, expect, test } from 'vitest';
import { characters, draw } from '../../support/equations.ts';

describe('stacks', () => {
  test('scripts are smaller and above or below the baseline', () => {
    const [x, sub, sup] = characters(draw('x_1^2'));
    expect(sub).toMatchObject({ text: '1', size: 7 });
    expect(sup).toMatchObject({ text: '2', size: 7 });
    expect(sub!.y).toBeGreaterThan(x!.y);
    expect(sup!.y).toBeLessThan(x!.y);
  });

  test('numerator and denominator are centred on each other', () => {
    const [top, foot] = characters(draw('\\frac{1}{222}'));
    expect(top!.x).toBeCloseTo(foot!.x + 5, 6);
  });

  test('columns of a matrix stand left, right or in the middle as asked', () => {
    const array = (align: string): number => {
      const placed = characters(draw(`\\begin{array}{${align}}1\\\\222\\end{array}`));
      const narrow = placed.find(({ text }) => text === '1')!;
      const wide = placed.filter(({ text }) => text === '2');
      return narrow.x - wide[0]!.x;
    };
    expect(array('l')).toBeCloseTo(0, 9);
    expect(array('c')).toBeCloseTo(5, 9);
    expect(array('r')).toBeCloseTo(10, 9);
  });

  test('an accent stands over the middle of its letter', () => {
    const [letter, accent] = characters(draw('\\dot{o}'));
    expect(accent!.x).toBeGreaterThan(letter!.x - 3);
    expect(accent!.x).toBeLessThan(letter!.x + 5);
  });
});
