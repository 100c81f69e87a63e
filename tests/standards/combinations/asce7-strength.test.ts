import { describe, expect, test } from 'vitest';
import {
  namedCombinations,
  type CombinationCase,
} from '../../../src/standards/index.ts';

const dead: CombinationCase = { mark: 'D', kind: 'dead' };
const live: CombinationCase = { mark: 'L', kind: 'live' };
const snow: CombinationCase = { mark: 'S', kind: 'snow' };
const wind: CombinationCase = { mark: 'W', kind: 'wind' };

const list = (
  cases: readonly CombinationCase[],
  standard: string = 'ASCE/SEI 7-22',
  alternatives: readonly (readonly string[])[] = [],
) =>
  namedCombinations(
    { name: 'asce7-strength' },
    { cases, alternatives, standards: [standard] },
  );
const marks = (...parameters: Parameters<typeof list>): string[] =>
  list(...parameters).combinations.map((entry) => entry.mark);

describe('asce7-strength', () => {
  test('lists dead and live', () => {
    expect(marks([dead, live])).toEqual(['1.4D', '1.2D + 1.6L', '1.2D + L', '0.9D']);
  });

  test('names every clause of a sum that several clauses give', () => {
    const entry = list([dead, live]).combinations.find((c) => c.mark === '1.2D + L');
    expect(entry?.clauses).toEqual([
      'ASCE/SEI 7-22 2.3.1 (3)',
      'ASCE/SEI 7-22 2.3.1 (4)',
    ]);
  });

  test('takes snow at strength level in 7-22 and at nominal level in 7-16', () => {
    expect(marks([dead, live, snow, wind])).toEqual([
      '1.4D',
      '1.2D + 1.6L + 0.3S',
      '1.2D + S + L',
      '1.2D + S + 0.5W',
      '1.2D + W + L + 0.3S',
      '0.9D + W',
    ]);
    expect(marks([dead, live, snow, wind], 'ASCE 7-16')).toEqual([
      '1.4D',
      '1.2D + 1.6L + 0.5S',
      '1.2D + 1.6S + L',
      '1.2D + 1.6S + 0.5W',
      '1.2D + W + L + 0.5S',
      '0.9D + W',
    ]);
  });

  test('blows one wind at a time', () => {
    const winds: CombinationCase[] = [
      { mark: 'W1', kind: 'wind' },
      { mark: 'W2', kind: 'wind' },
    ];
    expect(marks([dead, ...winds])).toEqual([
      '1.4D',
      '1.2D',
      '1.2D + 0.5W1',
      '1.2D + 0.5W2',
      '1.2D + W1',
      '1.2D + W2',
      '0.9D + W1',
      '0.9D + W2',
    ]);
  });

  test('adds cases of one kind, and parts alternatives', () => {
    const twice: CombinationCase[] = [dead, live, { mark: 'L2', kind: 'live' }];
    expect(marks(twice)[1]).toBe('1.2D + 1.6L + 1.6L2');
    expect(marks(twice, 'ASCE 7-22', [['L', 'L2']]).slice(1, 3)).toEqual([
      '1.2D + 1.6L',
      '1.2D + 1.6L2',
    ]);
  });

  test('takes fluids with dead load, and earth where it adds', () => {
    const wet: CombinationCase[] = [
      dead,
      { mark: 'F', kind: 'fluid' },
      { mark: 'H', kind: 'earth' },
    ];
    expect(marks(wet)).toEqual([
      '1.4D + 1.4F',
      '1.2D + 1.2F + 1.6H',
      '1.2D + 1.2F',
      '0.9D + 0.9F + 1.6H',
      '0.9D + 0.9F',
      '0.9D + 1.6H',
      '0.9D',
    ]);
    expect(list(wet).notes.some((note) => note.text.startsWith('Earth loads'))).toBe(
      true,
    );
  });

  test('tells of cases that it does not take', () => {
    const rest: CombinationCase[] = [
      dead,
      { mark: 'E', kind: 'seismic' },
      { mark: 'T', kind: 'temperature' },
      { mark: 'Q' },
    ];
    expect(list(rest).untaken).toEqual([
      {
        case: 'E',
        why: "A seismic case is combined by ASCE/SEI 7-22 2.3.6, which needs a list of the project's own.",
      },
      {
        case: 'T',
        why: "A temperature case is combined by ASCE/SEI 7-22 2.3.4, which needs a list of the project's own.",
      },
      { case: 'Q', why: 'Case Q has no kind.' },
    ]);
  });

  test('is for strength', () => {
    expect(list([dead, live]).combinations.every((c) => c.for === 'strength')).toBe(
      true,
    );
  });
});
