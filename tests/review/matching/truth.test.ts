import { describe, expect, test } from 'vitest';
import {
  balanceOf,
  holds,
  holdsAsRounded,
} from '../../../src/review/matching/truth.ts';
import { numberTerm, unknownTerm } from './terms.ts';

const truths = (key: string): number | undefined => (key === 'R' ? 2400 : undefined);

describe('the truth of a line', () => {
  test('a line holds where the true values make it nothing', () => {
    const balance = balanceOf([unknownTerm('R', 21), numberTerm(-50_400)], truths)!;
    expect(balance.residual).toBeCloseTo(0, 6);
    expect(holds(balance)).toBe(true);
  });

  test('a line that is out by more than the last bits does not', () => {
    const balance = balanceOf([unknownTerm('R', 21), numberTerm(-50_399)], truths)!;
    expect(holds(balance)).toBe(false);
    expect(holdsAsRounded(balance)).toBe(false);
  });

  test('written places leave room, as roundings of their own add up', () => {
    const terms = [unknownTerm('R', 21), numberTerm(-50_350, { spread: 0.001 })];
    expect(holdsAsRounded(balanceOf(terms, truths)!)).toBe(true);
    expect(
      holdsAsRounded(
        balanceOf([terms[0]!, numberTerm(-50_200, { spread: 0.001 })], truths)!,
      ),
    ).toBe(false);
  });

  test('nothing, and an unknown that nobody knows, have no balance', () => {
    expect(balanceOf([], truths)).toBeUndefined();
    expect(balanceOf([unknownTerm('Q', 1)], truths)).toBeUndefined();
  });

  test('however long a line is, its truth is told', () => {
    const terms = Array.from({ length: 5000 }, () => numberTerm(-10));
    expect(holds(balanceOf([numberTerm(50_000), ...terms], truths)!)).toBe(true);
  });
});
