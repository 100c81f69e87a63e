import { describe, expect, test } from 'vitest';
import {
  namedCombinations,
  type CombinationCase,
} from '../../../src/standards/index.ts';

const G: CombinationCase = { mark: 'G', kind: 'dead' };
const W: CombinationCase = { mark: 'W', kind: 'wind' };
const list = (cases: readonly CombinationCase[]) =>
  namedCombinations({ name: 'en1990-sls' }, { cases, alternatives: [], standards: [] });

describe('en1990-sls', () => {
  test('lists characteristic, frequent and quasi-permanent sums', () => {
    const { combinations } = list([G, { mark: 'Q', kind: 'live', category: 'C' }, W]);
    const of = (expression: string): string[] =>
      combinations
        .filter((entry) => entry.clauses.some((clause) => clause.includes(expression)))
        .map((entry) => entry.mark);
    expect(of('6.14b')).toEqual([
      'G',
      'G + Q',
      'G + W',
      'G + Q + 0.6W',
      'G + W + 0.7Q',
    ]);
    expect(of('6.15b')).toEqual(['G', 'G + 0.7Q', 'G + 0.2W', 'G + 0.2W + 0.6Q']);
    expect(of('6.16b')).toEqual(['G', 'G + 0.6Q']);
  });

  test('lists only characteristic sums where a category is missing, and says why', () => {
    const { combinations, notes } = list([G, { mark: 'Q', kind: 'live' }]);
    expect(combinations.map((entry) => entry.mark)).toEqual(['G', 'G + Q']);
    expect(notes.map((note) => note.text)).toContain(
      'Frequent and quasi-permanent combinations are not listed, because Q has no category of EN 1990 Table A1.1.',
    );
  });

  test('needs no category where nothing is imposed', () => {
    const { combinations } = list([G, W]);
    expect(combinations.map((entry) => entry.mark)).toEqual(['G', 'G + W', 'G + 0.2W']);
  });

  test('is for service', () => {
    expect(list([G, W]).combinations.every((entry) => entry.for === 'service')).toBe(
      true,
    );
  });
});
