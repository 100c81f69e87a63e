import { describe, expect, test } from 'vitest';
import { mergeCombinations, type Combination } from '../../../src/standards/index.ts';

const entry = (
  mark: string,
  factors: Record<string, number>,
  clause: string,
): Combination => ({
  mark,
  factors: Object.entries(factors).map(([name, factor]) => ({ case: name, factor })),
  for: 'strength',
  clauses: [clause],
});

describe('mergeCombinations', () => {
  test('keeps the first mark and every clause of equal sums, each clause once', () => {
    const merged = mergeCombinations([
      entry('D + L', { D: 1, L: 1 }, 'a'),
      entry('L', { L: 1 }, 'b'),
      entry('L + D', { L: 1, D: 1 }, 'c'),
      entry('D + L', { D: 1, L: 1 }, 'a'),
    ]);
    expect(merged.map(({ mark, clauses }) => [mark, clauses])).toEqual([
      ['D + L', ['a', 'c']],
      ['L', ['b']],
    ]);
  });

  test('keeps strength and service apart', () => {
    const strength = entry('D', { D: 1 }, 'a');
    const service: Combination = { ...strength, for: 'service' };
    expect(mergeCombinations([strength, service])).toEqual([strength, service]);
  });
});
