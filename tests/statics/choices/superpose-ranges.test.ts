import { describe, expect, test } from 'vitest';
import {
  solveBeam,
  superpose,
  superposeRanges,
  valueAt,
  type BeamSolution,
} from '../../../src/statics/index.ts';
import { beam, down, pin, roller, spread } from '../../support/beam.ts';
import { patterned } from '../../support/patterned.ts';

function solution(): BeamSolution {
  const structure = beam({
    points: { A: 0, B: 10, C: 14 },
    supports: { A: pin, B: roller() },
    loads: [
      spread(1, 'A', 'C', { case: 'D' }),
      spread(2, 'A', 'C', { case: 'L' }),
      down(3, 'C', { case: 'W' }),
    ],
  });
  const outcome = solveBeam(patterned(structure, 'L'));
  if (outcome.kind === 'unsolved') throw new Error('unsolved');
  return outcome;
}

describe('superposeRanges', () => {
  test('adds the state of one case to the greatest and the least of another', () => {
    const range = superposeRanges(
      solution(),
      [
        { case: 'D', factor: 1.2 },
        { case: 'L', factor: 1.6 },
      ],
      '1.2D + 1.6L',
    )!;
    // D at A by moments about B: (10·5 − 4·2)/10 = 4.2; L between −1.6 and 10.
    expect(range.reactions[0]!.y!.max.value).toBeCloseTo(1.2 * 4.2 + 1.6 * 10, 12);
    expect(range.reactions[0]!.y!.min.value).toBeCloseTo(1.2 * 4.2 - 1.6 * 1.6, 12);
    // Hogging over B: D gives −8; L −16 with the overhang loaded and 0 without.
    expect(valueAt(range.moment.min, 10, 'left')).toBeCloseTo(-1.2 * 8 - 1.6 * 16, 12);
    expect(valueAt(range.moment.max, 10, 'left')).toBeCloseTo(-1.2 * 8, 12);
    expect(range.extremes.moment.min.arrangement.choices).toContainEqual({
      id: 'L:2',
      option: 'on',
    });
  });

  test('takes the least for the greatest under a negative factor', () => {
    const range = superposeRanges(
      solution(),
      [
        { case: 'W', factor: 1 },
        { case: 'L', factor: -0.5 },
      ],
      'W - 0.5L',
    )!;
    // W at A: −3·4/10 = −1.2.
    expect(range.reactions[0]!.y!.max.value).toBeCloseTo(-1.2 + 0.8, 12);
    expect(range.reactions[0]!.y!.max.arrangement.choices).toEqual([
      { id: 'L:1', option: 'off' },
      { id: 'L:2', option: 'on' },
    ]);
    expect(range.reactions[0]!.y!.min.value).toBeCloseTo(-1.2 - 5, 12);
    expect(range.extremes.shear.max.value).toBeGreaterThanOrEqual(
      range.extremes.shear.min.value,
    );
  });

  test('counts a case that is named twice once, with both factors', () => {
    const twice = superposeRanges(
      solution(),
      [
        { case: 'L', factor: 1.5 },
        { case: 'L', factor: -0.5 },
      ],
      'L',
    );
    const [once] = solution().ranges;
    expect(twice!.reactions).toEqual(once!.reactions);
  });

  test('leaves out of the arrangement a case whose factor is 0', () => {
    const none = superposeRanges(
      solution(),
      [
        { case: 'D', factor: 1 },
        { case: 'L', factor: 0 },
      ],
      'D + 0L',
    )!;
    expect(none.extremes.moment.max.arrangement.choices).toEqual([]);
    expect(none.reactions[1]!.y!.max).toEqual({
      value: expect.closeTo(9.8, 12),
      arrangement: { choices: [], trains: [] },
    });
  });

  test('says nothing of a sum of cases that each have a state, and refuses a case that it does not know', () => {
    const { results, ranges } = solution();
    expect(
      superposeRanges({ results, ranges }, [{ case: 'D', factor: 1 }], 'D'),
    ).toBeUndefined();
    expect(superpose(results, [{ case: 'D', factor: 1 }], 'D').mark).toBe('D');
    expect(() =>
      superposeRanges(
        { results, ranges },
        [
          { case: 'L', factor: 1 },
          { case: 'S', factor: 1 },
        ],
        'L + S',
      ),
    ).toThrow('no result S');
  });
});
