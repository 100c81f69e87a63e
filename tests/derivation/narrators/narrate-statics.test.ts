import { describe, expect, test } from 'vitest';
import { toLinear } from '../../../src/equation/index.ts';
import { derivedBeam, stepOf, stepsOf } from '../../support/derived.ts';

describe('narrateSupports', () => {
  const rows = (supports: string) =>
    stepOf(
      stepsOf(
        derivedBeam({ points: '{ A: 0 ft, B: 20 ft }', supports }).derivation,
        'supports',
      ),
      'release',
    ).rows;

  test('gives each support the reactions that it can give, in their positive sense', () => {
    const gives = (supports: string) =>
      rows(supports).map(({ gives: given }) =>
        given.map(
          ({ symbol, sense }) => `${symbol.letter}_${symbol.subscript} ${sense}`,
        ),
      );
    expect(gives('{ A: pin, B: roller }')).toEqual([
      ['H_A right', 'R_A up'],
      ['R_B up'],
    ]);
    expect(gives('{ A: fixed }')).toEqual([
      ['H_A right', 'R_A up', 'M_A counterclockwise'],
    ]);
    expect(gives('{ A: guide, B: roller }')).toEqual([
      ['H_A right', 'M_A counterclockwise'],
      ['R_B up'],
    ]);
  });

  test('tells how an inclined reaction stands to the axis, from which its sine and cosine come', () => {
    const [, inclined] = rows('{ A: pin, B: { type: roller, normal: 110 deg } }');
    expect(inclined?.inclined).toMatchObject({ x: 'left', y: 'up' });
    expect(toLinear(inclined!.inclined!.toward)).toBe('110°');
    expect(toLinear(inclined!.inclined!.angle)).toBe('70°');
    expect(inclined?.gives).toMatchObject([
      { symbol: { letter: 'N' }, sense: 'along the normal' },
    ]);
  });

  test('takes a roller whose normal is upright for an ordinary one', () => {
    const [, upright] = rows('{ A: pin, B: { type: roller, normal: 90 deg } }');
    expect(upright?.inclined).toBeUndefined();
    expect(upright?.gives).toMatchObject([{ symbol: { letter: 'R' }, sense: 'up' }]);
  });
});

describe('narrateDeterminacy', () => {
  const facts = (rest: Readonly<Record<string, string>>) =>
    stepsOf(derivedBeam(rest).derivation, 'determinacy');

  test('counts unknowns against equations, one more for each hinge', () => {
    const steps = facts({
      points: '{ A: 0 ft, B: 20 ft, H: 24 ft, C: 40 ft }',
      supports: '{ A: pin, B: roller, C: roller }',
      hinges: '[ H ]',
    });
    expect(stepOf(steps, 'count')).toMatchObject({
      unknownCount: 4,
      equationCount: 4,
      degree: 0,
      hinges: ['H'],
    });
    expect(stepOf(steps, 'geometry-test')).toMatchObject({
      rank: 4,
      mechanisms: 0,
      redundants: 0,
      holdsTurning: false,
    });
  });

  test('says where the only redundancy is along the axis', () => {
    const steps = facts({
      points: '{ A: 0 ft, B: 20 ft }',
      supports: '{ A: pin, B: pin }',
    });
    expect(stepOf(steps, 'count')).toMatchObject({
      unknownCount: 4,
      equationCount: 3,
      degree: 1,
    });
    expect(stepOf(steps, 'method')).toMatchObject({ axialOnly: true });
  });
});
