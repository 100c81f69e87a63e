import { describe, expect, test } from 'vitest';
import {
  derivedBeam,
  linesOfStatement,
  siProject,
  stepOf,
  stepsOf,
} from '../../support/derived.ts';

const three = derivedBeam(
  {
    points: '{ A: 0 m, B: 3 m, C: 8 m }',
    supports:
      '{ A: { type: roller, normal: 60 deg }, B: { type: roller, normal: 120 deg }, C: { type: roller, normal: 100 deg } }',
    loads:
      '[ { case: G, point: 10 kN, at: 5 m }, { case: Q, point: 4 kN, at: C, direction: right }, { case: W, couple: 6 kN m, at: B, turn: clockwise } ]',
  },
  { 'project.yaml': siProject },
).derivation;

const together = (mark: string) =>
  stepOf(stepsOf(three, 'equations', mark), 'simultaneous');

describe('narrateCoupled', () => {
  test('writes each sum out and gathers it by its unknowns', () => {
    const { unknowns, equations } = together('G');
    expect(unknowns.map(({ letter, subscript }) => `${letter}_${subscript}`)).toEqual([
      'N_A',
      'N_B',
      'N_C',
    ]);
    expect(equations.map(({ gathered }) => linesOfStatement(gathered))).toEqual([
      ['2.598 m N_B + 7.878 m N_C = 50.00 kN·m'],
      ['−2.598 m N_A + 4.924 m N_C = 20.00 kN·m'],
      ['0.5000 N_A − 0.5000 N_B − 0.1736 N_C = 0'],
    ]);
  });

  test('says what each equation is multiplied by, and whether it is added or taken away', () => {
    const said = together('G').elimination.map(
      ({ what, pivot, row, times, isAdded, statement }) =>
        what === 'eliminate'
          ? `${pivot} ${
              times === undefined
                ? ''
                : `times ${linesOfStatement({
                    lines: [{ chain: [{ sign: '=', of: times }] }],
                  })
                    .join('')
                    .slice(2)} `
            }${isAdded === true ? 'to' : 'from'} ${row}: ${linesOfStatement(statement).join('')}`
          : `${row}: ${linesOfStatement(statement).join(' ')}`,
    );
    expect(said).toEqual([
      '3 times 5.196 m to 2: −2.598 m N_B + 4.022 m N_C = 20.00 kN·m',
      '2 to 1: 11.90 m N_C = 70.00 kN·m',
      '1: N_C = 70.00 kN·m / (11.90 m) = 5.882 kN',
      '2: N_B = (20.00 kN·m − 4.022 m (5.882 kN)) / (−2.598 m) = 1.408 kN',
      '3: N_A = (0.5000 (1.408 kN) + 0.1736 (5.882 kN)) / 0.5000 = 3.450 kN',
    ]);
  });

  test('tells a reaction that acts against its normal', () => {
    const found = together('W').found.filter(({ isNegative }) => isNegative);
    expect(found.length).toBeGreaterThan(0);
    expect(found.every(({ acts }) => acts === 'against the normal')).toBe(true);
  });
});
