import { describe, expect, test } from 'vitest';
import { chooseMethod } from '../../../src/derivation/redundants/choose-method.ts';
import type { BeamStructure } from '../../../src/statics/index.ts';
import { beam, fixed, guide, pin, roller, spring } from '../../support/beam.ts';

const points = { A: 0, B: 4, C: 9, D: 15 } as const;

const chosen = (structure: BeamStructure, preferred?: string) => {
  const { method, why, redundants } = chooseMethod(structure, preferred);
  return [method, why, redundants];
};

describe('the choice of a hand method', () => {
  test('takes three moments for simple supports in a row, overhangs or not', () => {
    expect(
      chosen(beam({ points, supports: { A: pin, B: roller(), D: roller() } })),
    ).toEqual(['three-moment', 'continuous', 1]);
    expect(
      chosen(beam({ points, supports: { A: pin, B: roller(), C: roller() } })),
    ).toEqual(['three-moment', 'continuous', 1]);
  });

  test('takes moment distribution only where it is asked for and fits', () => {
    const continuous = beam({ points, supports: { A: pin, B: roller(), D: roller() } });
    expect(chosen(continuous, 'moment-distribution')[0]).toBe('moment-distribution');
    expect(chosen(continuous, 'slope-deflection')).toEqual([
      'slope-deflection',
      'asked-for',
      1,
    ]);
    const propped = beam({ points, supports: { A: fixed, D: roller() } });
    expect(chosen(propped, 'moment-distribution')[0]).toBe('force');
  });

  test('takes the force method for propped and built-in beams, springs among their supports too', () => {
    expect(chosen(beam({ points, supports: { A: fixed, D: roller() } }))).toEqual([
      'force',
      'few-redundants',
      1,
    ]);
    expect(chosen(beam({ points, supports: { A: fixed, D: fixed } }))).toEqual([
      'force',
      'few-redundants',
      2,
    ]);
    expect(
      chosen(beam({ points, supports: { A: pin, B: spring(1e6), D: roller() } })),
    ).toEqual(['force', 'few-redundants', 1]);
  });

  test('counts no redundant along the beam, which bends nothing', () => {
    const { redundants } = chooseMethod(
      beam({ points, supports: { A: pin, B: pin, D: pin } }),
    );
    expect(redundants).toBe(1);
  });

  test('takes slope-deflection for the rest and says what kept the others out', () => {
    const springs = { A: fixed, B: spring(1e6), C: spring(1e6), D: spring(1e6) };
    expect(chosen(beam({ points, supports: springs }))).toEqual([
      'slope-deflection',
      'springs',
      3,
    ]);
    expect(chosen(beam({ points, supports: { A: fixed, C: guide } }))[1]).toBe('guide');
    expect(
      chosen(
        beam({
          points,
          supports: { A: fixed, C: roller(), D: roller() },
          hinges: ['B'],
        }),
      )[1],
    ).toBe('hinges');
    expect(
      chosen(beam({ points, supports: { A: pin, B: roller(60), D: roller() } }))[1],
    ).toBe('inclined');
    const stepped: BeamStructure = {
      ...beam({ points, supports: { A: fixed, B: fixed, D: fixed } }),
      stiffness: [
        { from: 0, to: 6, EI: 2e7 },
        { from: 6, to: 15, EI: 1e7 },
      ],
    };
    expect(chosen(stepped)).toEqual(['slope-deflection', 'stepped', 4]);
  });
});
