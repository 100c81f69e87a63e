import { describe, expect, test } from 'vitest';
import { candidateSums } from '../../src/statics/candidate-sums.ts';
import { tidyStructure } from '../../src/statics/tidy-structure.ts';
import { beam, fixed, roller } from '../support/beam.ts';

const candidates = candidateSums(
  tidyStructure(
    beam({
      points: { A: 0, B: 4, H: 6, C: 10 },
      supports: { A: fixed, C: roller() },
      hinges: ['H'],
    }),
  ),
);

describe('candidateSums', () => {
  test('are force sums and moments about every named point, single pieces before the whole', () => {
    expect(candidates.map(({ part, pieces }) => [part.from, part.to, pieces])).toEqual([
      ...new Array<number[]>(5).fill([0, 6, 1]),
      ...new Array<number[]>(4).fill([6, 10, 1]),
      ...new Array<number[]>(6).fill([0, 10, 2]),
    ]);
  });

  test('hold every unknown of the part, arms measured in the length of the beam', () => {
    const about = candidates.find(
      ({ sum, part }) => sum.kind === 'moments' && sum.about === 4 && part.to === 6,
    )!;
    expect(about.entries.map(({ key, factor }) => [key, factor])).toEqual([
      ['["reaction","A",0]', 0],
      ['["reaction","A",1]', -0.4],
      ['["reaction","A",2]', 1],
      ['["hinge","H","x"]', 0],
      ['["hinge","H","y"]', -0.2],
    ]);
  });

  test('count the unknown forces that pass through the point', () => {
    const through = candidates
      .filter(({ part }) => part.to === 6)
      .map((one) => one.through);
    expect(through).toEqual([0, 0, 2, 0, 2]);
  });
});
