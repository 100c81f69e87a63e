import { describe, expect, test } from 'vitest';
import {
  derivedBeam,
  linesOfStatement,
  siProject,
  stepOf,
  stepsOf,
} from '../../support/derived.ts';

const shared = (loads: string) =>
  stepOf(
    stepsOf(
      derivedBeam(
        { points: '{ A: 0 m, B: 8 m }', supports: '{ A: pin, B: pin }', loads },
        { 'project.yaml': siProject },
      ).derivation,
      'equations',
    ),
    'axial-shared',
  );

describe('narrateAxial', () => {
  test('shares one force along the beam as the opposite distances', () => {
    const { statement, hasLoads } = shared(
      '[ { point: 10 kN, at: 2 m, direction: right } ]',
    );
    expect(hasLoads).toBe(true);
    expect(linesOfStatement(statement)).toEqual([
      'ΣF_x = H_A + H_B + P_1 = 0',
      '= H_A + H_B + 10 kN = 0',
      'H_A = −10.00 kN (6 m) / (8 m) = −7.500 kN',
      'H_B = −10.00 kN (2 m) / (8 m) = −2.500 kN',
    ]);
  });

  test('calls on neither where nothing acts along the beam', () => {
    const { statement, hasLoads } = shared('[ { point: 10 kN, at: 2 m } ]');
    expect(hasLoads).toBe(false);
    expect(linesOfStatement(statement)).toEqual([
      'ΣF_x = H_A + H_B = 0',
      'H_A = 0 kN',
      'H_B = 0 kN',
    ]);
  });
});
